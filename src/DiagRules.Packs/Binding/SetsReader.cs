using System.Collections.Immutable;
using DiagRules.Model.Problems;
using DiagRules.Packs.Sets;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Reads <c>sets</c>.</summary>
internal sealed class SetsReader(Draft draft)
{
    public MemberSets Read(MapNode? map)
    {
        var sets = new Dictionary<string, ImmutableArray<(string Id, string Word)>>(StringComparer.Ordinal);
        foreach (var (key, value) in map?.Pairs ?? [])
        {
            if (IsName(key) && value is MapNode members && IsWithinLimit(key, members))
            {
                sets[key.Value] = [.. members.Pairs.Select(Member).OfType<(string, string)>()];
            }
        }

        return new MemberSets(sets);
    }

    private bool IsName(ScalarNode key)
    {
        if (key.Value.Length > 0 && key.Value.All(char.IsAsciiLetterLower))
        {
            return true;
        }

        var letters = new string([.. key.Value.ToLowerInvariant().Where(char.IsAsciiLetterLower)]);
        draft.Problems.Add(
            ProblemCatalogue.BadId,
            key.Place,
            $"'{Excerpt.Of(key.Value)}' is no name of a set: one word of small letters a-z.{(letters.Length > 0 ? $" Write '{letters}'." : "")}");
        return false;
    }

    private bool IsWithinLimit(ScalarNode key, MapNode members)
    {
        if (members.Pairs.Count <= draft.Limits.SetMembers)
        {
            return true;
        }

        draft.Problems.Add(
            ProblemCatalogue.LimitExceeded,
            key.Place,
            $"'{key.Value}' has {members.Pairs.Count} members; the limit is {draft.Limits.SetMembers} (setting '{nameof(PackLimits.SetMembers)}').");
        return false;
    }

    private (string Id, string Word)? Member(MapPair pair) =>
        IdWords.Read(pair.Key.Text, IdKind.Id, draft.Problems) is { } id && pair.Value is ScalarNode word ? (id, word.Value) : null;
}
