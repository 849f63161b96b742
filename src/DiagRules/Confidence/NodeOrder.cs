using DiagRules.Model;

namespace DiagRules.Confidence;

/// <summary>
/// The order in which causes, effects and findings enter the network: what acts together stands together. Exact inference takes causes in
/// side by side in this order, so its tables grow with the number of effects that are open at the same place.
/// </summary>
internal sealed class NodeOrder
{
    private readonly Dictionary<int, IReadOnlyList<Graded>> _parents;
    private readonly List<Graded> _order = [];
    private readonly HashSet<int> _placed = [];

    private NodeOrder(Dictionary<int, IReadOnlyList<Graded>> parents) => _parents = parents;

    /// <summary>Causes and consequences, each after all that shows it.</summary>
    /// <param name="nodes">Everything on this chassis.</param>
    /// <param name="parents">What shows each consequence, by node.</param>
    public static IReadOnlyList<Graded> Of(IReadOnlyList<Graded> nodes, Dictionary<int, IReadOnlyList<Graded>> parents)
    {
        var order = new NodeOrder(parents);
        var inner = nodes.OfType<Consequence>().Where(node => !node.Shows.IsEmpty).ToList();

        // The innermost chains of effects first: each closes before the next one opens.
        foreach (var node in inner.OrderByDescending(node => order.Depth(node)).ThenBy(node => node.Node))
        {
            order.Place(node);
        }

        foreach (var node in nodes)
        {
            order.Place(node);
        }

        return order._order;
    }

    private int Depth(Graded node) => 1 + ParentsOf(node).OfType<Consequence>().Select(Depth).DefaultIfEmpty(0).Max();

    private IReadOnlyList<Graded> ParentsOf(Graded node) => _parents.GetValueOrDefault(node.Node, []);

    private void Place(Graded node)
    {
        if (!_placed.Add(node.Node))
        {
            return;
        }

        foreach (var parent in ParentsOf(node).OrderByDescending(parent => parent is Consequence ? Depth(parent) : 0).ThenBy(parent => parent.Node))
        {
            Place(parent);
        }

        _order.Add(node);
    }
}
