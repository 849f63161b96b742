using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace DiagRules.Packs.Sets;

/// <summary>The sets of a pack: names and members, each member with its word for texts. Immutable.</summary>
internal sealed partial class MemberSets
{
    public static readonly MemberSets None = new(new Dictionary<string, ImmutableArray<(string Id, string Word)>>());

    private readonly FrozenDictionary<string, ImmutableArray<(string Id, string Word)>> _sets;

    public MemberSets(IReadOnlyDictionary<string, ImmutableArray<(string Id, string Word)>> sets) =>
        _sets = sets.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Names in ordinal order.</summary>
    public IEnumerable<string> Names => _sets.Keys.Order(StringComparer.Ordinal);

    /// <summary>Members in the order they are written, or <see langword="null"/> when there is no such set.</summary>
    public ImmutableArray<string>? Members(string set) => _sets.TryGetValue(set, out var members) ? [.. members.Select(member => member.Id)] : null;

    public string WordOf(string set, string member) => _sets[set].First(known => known.Id == member).Word;

    public bool Has(string set) => _sets.ContainsKey(set);

    /// <summary><c>$side</c>, or <c>$$</c> for a dollar sign.</summary>
    [GeneratedRegex(@"\$(?:\$|([a-z]+))")]
    public static partial Regex Mention();

    /// <summary>Names of the sets that a text mentions, each once, in order.</summary>
    public static IReadOnlyList<string> Mentioned(string text) =>
        text.Contains('$', StringComparison.Ordinal)
            ? [.. Mention().Matches(text).Where(match => match.Groups[1].Success).Select(match => match.Groups[1].Value).Distinct(StringComparer.Ordinal)]
            : [];
}
