using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Layers;

/// <summary>Keys that two bases set differently, neither of which builds on the other, until a pack above both settles them.</summary>
internal sealed class Clashes(IReadOnlyList<LayerPack> layers, PackTrees root, ProblemSink problems)
{
    private readonly Dictionary<string, LayerPack> _byId = layers.ToDictionary(layer => layer.Trees.Id, StringComparer.Ordinal);
    private readonly SortedDictionary<string, (Node Lower, Node Upper)> _open = new(StringComparer.Ordinal);

    /// <summary>Whether a pack builds on another, or is it.</summary>
    public bool IsAbove(string upper, string lower) =>
        upper == lower || lower.Length == 0 || (_byId.TryGetValue(upper, out var layer) && layer.Bases.Contains(lower));

    /// <summary>Two packs side by side set a key differently.</summary>
    public void Add(string path, Node lower, Node upper) => _open[path] = (lower, upper);

    /// <summary>A pack above both sets the key, or one that it is part of.</summary>
    public void Settle(string path)
    {
        foreach (var open in _open.Keys.Where(open => open == path || open.StartsWith(path + "/", StringComparison.Ordinal)).ToList())
        {
            _open.Remove(open);
        }
    }

    /// <summary>One base takes an entry away that another, beside it, changes.</summary>
    public void CheckRemoval(string path, string id, MapPair removed, ScalarNode key)
    {
        var changer = new[] { removed.Key.Place.Pack }.Concat(Packs(removed.Value)).FirstOrDefault(pack => !IsAbove(key.Place.Pack, pack));
        if (changer is not null)
        {
            problems.Add(
                ProblemCatalogue.BasesDisagree,
                ExtendsPlace(root.Head, key.Place.Pack),
                $"'{id}' is taken away by '{key.Place.Pack}' and changed by '{changer}'; settle it by writing '{id}', or '{id}: remove', in this pack.");
        }
    }

    /// <summary>Reports what nobody settled, at the <c>extends</c> that brings it in.</summary>
    public void Report(MapNode head)
    {
        foreach (var (path, (lower, upper)) in _open)
        {
            var parts = path.Split('/', 3);
            var key = parts.Length > 2 ? $"{parts[1]}: {parts[2].Replace("/", ": ", StringComparison.Ordinal)}" : parts[^1];
            problems.Add(
                ProblemCatalogue.BasesDisagree,
                ExtendsPlace(head, upper.Place.Pack),
                $"'{key}' is '{TreeText.Of(lower)}' in '{lower.Place.Pack}' and '{TreeText.Of(upper)}' in '{upper.Place.Pack}'; settle it by "
                + $"writing '{parts[^1].Split('/')[^1]}' in this pack.");
        }
    }

    /// <summary>The item of <c>extends</c> that leads to a pack.</summary>
    private SourcePlace ExtendsPlace(MapNode? head, string pack)
    {
        var items = (head?.Find("extends")?.Value as ListNode)?.Items ?? [];
        return items.FirstOrDefault(item => item is ScalarNode text && IsAbove(text.Value.Split('@')[0], pack))?.Place ?? head?.Find("extends")?.Key.Place ?? default;
    }

    private static IEnumerable<string> Packs(Node node) => node switch
    {
        MapNode map => map.Pairs.SelectMany(pair => Packs(pair.Value).Prepend(pair.Key.Place.Pack)),
        ListNode list => list.Items.SelectMany(Packs),
        _ => [node.Place.Pack],
    };
}
