using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Makes complaints.</summary>
internal sealed class ComplaintBinder(Draft draft) : IEntryBinder
{
    private const string Unlisted = "unlisted";

    public Entry? Bind(Declared declared, Fields fields)
    {
        var shares = fields.Map("shares");
        return new Complaint
        {
            Id = declared.Id,
            Index = declared.Index,
            Title = fields.Sentence("title") ?? declared.Id,
            Means = Means(fields),
            Shares = shares is null ? null : Shares(shares, fields),
            Unlisted = shares?.Find(Unlisted)?.Value is ScalarNode text ? ShareReader.Read(text.Text, Unlisted, draft.Problems) : null,
        };
    }

    private ImmutableArray<NodeGrades> Means(Fields fields)
    {
        if (fields.Map("means") is not { } map)
        {
            return [];
        }

        var means = new SortedDictionary<int, NodeGrades>();
        foreach (var (named, pair) in fields.NamedBy(map, Target.Observable))
        {
            if (pair.Value is ScalarNode text && named.Entry is Graded graded && OpenGradesReader.Read(text.Text, graded, draft.Problems) is { } grades)
            {
                means[named.Node] = new NodeGrades(named.Node, grades);
            }
        }

        return [.. means.Values];
    }

    /// <summary>A key with <c>$set</c> holds the share of all members together.</summary>
    private ImmutableDictionary<int, double> Shares(MapNode map, Fields fields)
    {
        var causes = new MapNode(map.Place, [.. map.Pairs.Where(pair => pair.Key.Value != Unlisted)]);
        var shares = ImmutableDictionary.CreateBuilder<int, double>();
        var names = new Names(draft);
        foreach (var (named, pair) in fields.NamedBy(causes, Target.Cause))
        {
            if (pair.Value is ScalarNode text && ShareReader.Read(text.Text, named.Id, draft.Problems) is { } share)
            {
                shares[named.Node] = share / names.Ids(pair.Key).Count();
            }
        }

        return shares.ToImmutable();
    }
}
