using System.Collections.Frozen;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Sets;

/// <summary>Copies entries whose id holds <c>$set</c>, once for each member.</summary>
internal sealed class SetExpansion(MemberSets sets, ProblemSink problems)
{
    /// <summary>The copies of a template, each with its id; the entry itself when its id names no set.</summary>
    public IEnumerable<(string Id, MapPair Entry)> Expand(MapPair entry)
    {
        var mentioned = MemberSets.Mentioned(entry.Key.Value);
        if (mentioned.Count == 0)
        {
            return [(entry.Key.Value, entry)];
        }

        return mentioned.All(set => Knows(set, entry.Key)) ? Copies(mentioned).Select(copy => Apply(copy, entry)) : [];
    }

    /// <summary>How many copies an entry makes; 1 when its id names no set.</summary>
    public long Count(MapPair entry) => Count(MemberSets.Mentioned(entry.Key.Value));

    /// <summary>How many combinations of members some sets have; a set that is not there has none.</summary>
    public long Count(IReadOnlyList<string> mentioned) =>
        mentioned.Aggregate(1L, (count, set) => Math.Min(count * (sets.Members(set)?.Length ?? 0), int.MaxValue));

    /// <summary>Whether there is such a set; reports where there is not.</summary>
    public bool Knows(string set, ScalarNode at)
    {
        if (sets.Has(set))
        {
            return true;
        }

        var remedy = sets.Names.Any() ? $"{Spelling.DidYouMean(set, sets.Names)} Sets here: {string.Join(", ", sets.Names)}." : " This pack has no 'sets'.";
        problems.Add(ProblemCatalogue.NoSuchSet, at.Place, $"No set '{set}' for '${set}'.{remedy}");
        return false;
    }

    /// <summary>Every combination of members; the first set runs slowest.</summary>
    public IEnumerable<Copy> Copies(IReadOnlyList<string> mentioned)
    {
        IEnumerable<(string Set, string Member)[]> combinations = [[]];
        foreach (var set in mentioned)
        {
            var members = sets.Members(set)!.Value;
            combinations = combinations.SelectMany(chosen => members.Select(member => ((string, string)[])[.. chosen, (set, member)]));
        }

        var all = combinations.ToList();
        return all.Select(chosen => new Copy(
            chosen.ToFrozenDictionary(pair => pair.Set, pair => pair.Member, StringComparer.Ordinal), all.Count, string.Join(", ", chosen.Select(pair => pair.Member))));
    }

    private static (string Id, MapPair Entry) Apply(Copy copy, MapPair template)
    {
        var key = Mark(template.Key, copy);
        var id = Substitution.Apply(key.Text, copy.Members.GetValueOrDefault).Value;
        return (id, new MapPair(key, Mark(template.Value, copy)));
    }

    /// <summary>The same tree, each scalar knowing which member it stands for.</summary>
    private static Node Mark(Node node, Copy copy) => node switch
    {
        ScalarNode scalar => Mark(scalar, copy),
        ListNode list => new ListNode(list.Place with { Member = copy.Name }, [.. list.Items.Select(item => Mark(item, copy))]),
        MapNode map => new MapNode(map.Place with { Member = copy.Name }, [.. map.Pairs.Select(pair => new MapPair(Mark(pair.Key, copy), Mark(pair.Value, copy)))]),
        _ => node,
    };

    private static ScalarNode Mark(ScalarNode scalar, Copy copy) =>
        new(scalar.Text with { Place = scalar.Place with { Member = copy.Name } }, copy) { CutOff = scalar.CutOff };
}
