using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Reports an id that stands twice in one pack, at the second of the two places.</summary>
internal static class DoubleIds
{
    public static void Report(string id, (string Section, ScalarNode Key) one, (string Section, ScalarNode Key) other, ProblemSink problems)
    {
        var (first, second) = one.Key.Place.CompareTo(other.Key.Place) <= 0 ? (one, other) : (other, one);
        problems.Add(
            ProblemCatalogue.IdUsedTwice,
            second.Key.Place,
            $"'{id}' is the id of {Wording.An(Section.Noun(second.Section))} here and of {Wording.An(Section.Noun(first.Section))} in "
            + $"{first.Key.Place}; an id stands once in a pack.");
    }
}
