using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Sets;

namespace DiagRules.Packs.Binding;

/// <summary>What conditions see of a pack in the making, from inside one entry.</summary>
internal sealed class Symbols(Draft draft, Copy? copy) : ISymbols
{
    private static readonly ImmutableDictionary<string, string> NoMembers = ImmutableDictionary<string, string>.Empty;

    public IEnumerable<string> Ids => draft.Ids;

    public IEnumerable<string> Sets => draft.Sets.Names;

    public IReadOnlyDictionary<string, string> Copied => copy is null ? NoMembers : copy.Members;

    public IReadOnlyList<CalculationLibrary> Calculations => draft.Calculations;

    public bool LacksLibrary => draft.LacksLibrary;

    public Entry? Find(string id) => draft.Find(id)?.Entry;

    public bool IsRefused(string id, SourcePlace place)
    {
        var declared = draft.Find(id);
        if (declared is not null || !draft.Removed.ContainsKey(id))
        {
            return declared is { Entry: null };
        }

        draft.Dangling.Add((id, place));
        return true;
    }

    public ImmutableArray<string>? Members(string set) => draft.Sets.Members(set);
}
