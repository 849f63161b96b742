using System.Collections.Immutable;
using System.Globalization;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Reads maps of grades to probabilities: what is left over goes to the first grade.</summary>
internal sealed class Distributions(Draft draft, Fields fields)
{
    // Decimal fractions such as 0.1 + 0.2 + 0.7 miss 1 by some units in the last place.
    private const double Rounding = 1e-9;

    /// <summary>The distribution, or <see langword="null"/> after reporting.</summary>
    /// <param name="map">Grades to probabilities.</param>
    /// <param name="child">Whose grades they are.</param>
    /// <param name="subject">How a message names them: <c>Grades of 'noise' under 'pump-worn'</c>.</param>
    /// <param name="place">Where a sum over 1 is reported.</param>
    public ImmutableArray<double>? Read(MapNode map, Declared child, string subject, SourcePlace place)
    {
        if (child.Entry is not Graded graded)
        {
            return null;
        }

        var before = draft.Problems.Count;
        var parts = new double[graded.Grades.Length];
        var written = new List<string>();
        foreach (var (key, value) in map.Pairs)
        {
            if (Grade(key, graded) is { } grade && value is ScalarNode text && fields.Probability(text) is { } probability)
            {
                parts[grade] = probability;
                written.Add($"{key.Value} {InWords(text.Value, probability)}");
            }
        }

        var sum = parts.Sum();
        if (sum > 1 + Rounding)
        {
            draft.Problems.Add(
                ProblemCatalogue.GradesOverOne, place, $"{subject} add up to {Number(sum)} ({string.Join(", ", written)}); together they can be 1 at most.");
        }

        parts[0] = Math.Max(0, 1 - sum);
        return draft.Problems.Count == before ? [.. parts] : null;
    }

    /// <summary>A distribution all on the first grade.</summary>
    public static ImmutableArray<double> Healthy(int grades) => [1, .. new double[grades - 1]];

    private int? Grade(ScalarNode key, Graded graded)
    {
        var grade = graded.GradeOf(key.Value);
        if (grade < 0)
        {
            draft.Problems.Add(ProblemCatalogue.NoSuchGrade, key.Place, GradeWords.NoSuchGrade(key.Value, graded));
            return null;
        }

        if (grade > 0)
        {
            return grade;
        }

        draft.Problems.Add(
            ProblemCatalogue.FirstGradeGiven,
            key.Place,
            $"'{key.Value}' is the first grade of '{graded.Id}' and gets what the others leave over; take it out.");
        return null;
    }

    private static string InWords(string written, double probability)
    {
        var number = Number(probability);
        return written.Length > 0 && char.IsLetter(written[0]) ? $"{written} = {number}" : number;
    }

    public static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
