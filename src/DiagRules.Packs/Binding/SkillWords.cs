using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Words for who can do a step, and who observed something.</summary>
internal static class SkillWords
{
    private static readonly (string Word, Skill Skill)[] Words =
    [
        ("owner", Skill.Owner), ("owner-with-meter", Skill.OwnerWithMeter), ("workshop", Skill.Workshop), ("specialist", Skill.Specialist),
    ];

    /// <summary>The skill, or <see langword="null"/> after reporting.</summary>
    public static Skill? Read(ScalarNode text, string key, ProblemSink problems)
    {
        foreach (var (word, skill) in Words)
        {
            if (word == text.Value)
            {
                return skill;
            }
        }

        if (!ReservedWords.IsYamlConstant(text.Value))
        {
            var words = Words.Select(known => known.Word);
            problems.Add(
                ProblemCatalogue.WrongKindOfValue,
                text.Place,
                $"'{key}' is '{Excerpt.Of(text.Value)}'; it takes {Wording.Or(words)}.{Spelling.DidYouMean(text.Value, words)}");
        }

        return null;
    }
}
