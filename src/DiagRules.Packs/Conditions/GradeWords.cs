using DiagRules.Model;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Conditions;

/// <summary>What messages say about a word that is no grade.</summary>
internal static class GradeWords
{
    public static string NoSuchGrade(string word, Graded graded)
    {
        var near = Spelling.Near(word, graded.Grades);
        var proposal = near.Count == 0 ? "" : $" Did you mean {Wording.Or(near)}?";
        return $"{Capital(EntryKinds.Noun(graded))} '{graded.Id}' has no grade '{Excerpt.Of(word)}'; its grades are {Wording.And(graded.Grades)}.{proposal}";
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
