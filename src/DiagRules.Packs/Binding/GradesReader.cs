using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Reads the grades of findings and effects, before anything refers to them.</summary>
internal static class GradesReader
{
    private const int Fewest = 2, Most = 8;

    /// <summary>Two to eight grades, or nothing after reporting.</summary>
    public static ImmutableArray<string> Read(Draft draft, Declared declared)
    {
        if (declared.Section is Section.Causes or Section.Preconditions)
        {
            return Cause.AbsentPresent;
        }

        if (declared.Body.Find("grades") is not { Value: ListNode list } pair)
        {
            return [];
        }

        var texts = list.Items.OfType<ScalarNode>().ToList();
        var grades = texts.Select(text => IdWords.Read(text.Text, IdKind.Grade, draft.Problems)).OfType<string>().ToImmutableArray();
        if (texts.Count != list.Items.Count || grades.Length != texts.Count)
        {
            return [];
        }

        return IsRightNumber(draft, declared, grades, pair.Key.Place) && AreDifferent(draft, declared, texts) ? grades : [];
    }

    private static bool IsRightNumber(Draft draft, Declared declared, ImmutableArray<string> grades, SourcePlace place)
    {
        if (grades.Length is < Fewest or > Most)
        {
            draft.Problems.Add(
                ProblemCatalogue.BadGrades,
                place,
                $"'{declared.Id}' has {grades.Length} grade{(grades.Length == 1 ? "" : "s")} ({string.Join(", ", grades)}); it takes {Fewest} "
                + $"to {Most}, the healthy one first.");
            return false;
        }

        if (grades.Length <= draft.Limits.Grades)
        {
            return true;
        }

        draft.Problems.Add(
            ProblemCatalogue.LimitExceeded,
            place,
            $"'{declared.Id}' has {grades.Length} grades; the limit is {draft.Limits.Grades} (setting '{nameof(PackLimits.Grades)}').");
        return false;
    }

    private static bool AreDifferent(Draft draft, Declared declared, List<ScalarNode> texts)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var doubled = texts.Find(text => !seen.Add(text.Value));
        if (doubled is null)
        {
            return true;
        }

        draft.Problems.Add(
            ProblemCatalogue.BadGrades,
            doubled.Place,
            $"'{doubled.Value}' stands twice among the grades of '{declared.Id}' ({string.Join(", ", texts.Select(text => text.Value))}).");
        return false;
    }
}
