using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Reads grades: one, several left open (<c>clicks-only or silent</c>), or a stretch (<c>slow or worse</c>).</summary>
internal static class OpenGradesReader
{
    private const string Or = " or ";

    /// <summary>The grades, or <see langword="null"/> after reporting.</summary>
    public static GradeSet? Read(PlacedText text, Graded graded, ProblemSink problems)
    {
        var words = Split(text);
        if (words.Count == 2 && words[1].Value is Keywords.Worse or Keywords.Better)
        {
            return GradeOf(words[0], graded, problems) is { } grade
                ? words[1].Value == Keywords.Worse ? GradeSet.OrWorse(grade, graded.Grades.Length) : GradeSet.OrBetter(grade)
                : null;
        }

        if (words.Count > graded.Grades.Length)
        {
            problems.Add(
                ProblemCatalogue.BadGrades,
                text.At(0, text.Value.Length),
                $"'{Excerpt.Of(text.Value)}' names {words.Count} grades, and '{graded.Id}' has only {graded.Grades.Length}: {Wording.And(graded.Grades)}.");
            return null;
        }

        var grades = GradeSet.None;
        var areKnown = true;
        foreach (var word in words)
        {
            var grade = GradeOf(word, graded, problems);
            areKnown &= grade is not null;
            grades |= grade is null ? GradeSet.None : GradeSet.Of(grade.Value);
        }

        return areKnown ? grades : null;
    }

    /// <summary>One grade, or <see langword="null"/> after reporting.</summary>
    public static int? ReadOne(PlacedText text, Graded graded, ProblemSink problems) => GradeOf(text, graded, problems);

    private static List<PlacedText> Split(PlacedText text)
    {
        var words = new List<PlacedText>();
        var start = 0;
        for (var at = text.Value.IndexOf(Or, StringComparison.Ordinal); at >= 0; at = text.Value.IndexOf(Or, start, StringComparison.Ordinal))
        {
            words.Add(text.Slice(start, at - start));
            start = at + Or.Length;
        }

        words.Add(text.Slice(start, text.Value.Length - start));
        return words;
    }

    private static int? GradeOf(PlacedText word, Graded graded, ProblemSink problems)
    {
        var grade = graded.GradeOf(word.Value);
        if (grade >= 0)
        {
            return grade;
        }

        problems.Add(ProblemCatalogue.NoSuchGrade, word.At(0, word.Value.Length), GradeWords.NoSuchGrade(word.Value, graded));
        return null;
    }
}
