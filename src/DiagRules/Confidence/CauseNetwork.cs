using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Confidence;

/// <summary>
/// The causes, effects and findings of a pack on one chassis as a network to infer in, with the model for each complaint. Immutable
/// and thread-safe after construction.
/// </summary>
internal sealed class CauseNetwork
{
    private readonly Pack _pack;
    private readonly string? _chassis;
    private readonly int[] _toNetwork;
    private readonly Dictionary<string, CauseModel> _byComplaint = new(StringComparer.Ordinal);

    public CauseNetwork(Pack pack, string? chassis)
    {
        _pack = pack;
        _chassis = chassis;
        _toNetwork = new int[pack.Nodes.Length];
        Array.Fill(_toNetwork, -1);
        var parents = ParentsByChild();
        var order = NodeOrder.Of([.. pack.Nodes.Where(node => node.IsOn(chassis))], ParentNodes(parents));
        Causes = [.. order.OfType<Cause>()];
        var network = Build(order, parents);
        HasShares = Causes.All(cause => cause.Probability is null);
        Model = HasShares
            ? CauseModel.FromShares(network, OwnShares(), Unlisted(OwnShares()), pack.Coexistence)
            : CauseModel.FromProbabilities(network, Causes.ToDictionary(cause => NodeOf(cause.Node), cause => cause.Probability ?? 0));
        foreach (var complaint in pack.Complaints.Where(complaint => complaint.Shares is not null && HasShares))
        {
            var shares = SharesOf(complaint);
            _byComplaint.Add(complaint.Id, Model.WithShares(shares, complaint.Unlisted ?? Unlisted(shares)));
        }
    }

    /// <summary>Causes and preconditions of this chassis, in the order of the model's answers.</summary>
    public ImmutableArray<Cause> Causes { get; }

    /// <summary>Whether one of the causes is taken as the primary one.</summary>
    public bool HasShares { get; }

    /// <summary>The model without a complaint that has shares of its own.</summary>
    public CauseModel Model { get; }

    /// <summary>Node of the network for a node of the pack, or -1 when it is not weighed.</summary>
    public int NodeOf(int packNode) => _toNetwork[packNode];

    /// <summary>The model under a complaint.</summary>
    public CauseModel ModelFor(Complaint? complaint) =>
        complaint is not null && _byComplaint.TryGetValue(complaint.Id, out var model) ? model : Model;

    private Dictionary<int, double> OwnShares() => Causes.ToDictionary(cause => NodeOf(cause.Node), cause => cause.Share ?? 0);

    private Dictionary<int, double> SharesOf(Complaint complaint) =>
        complaint.Shares!
            .Where(pair => NodeOf(pair.Key) >= 0)
            .ToDictionary(pair => NodeOf(pair.Key), pair => pair.Value);

    /// <summary>The pack's own share of what it does not list, or so much that it is 5 % of all.</summary>
    private double Unlisted(Dictionary<int, double> shares) =>
        _pack.Unlisted ?? shares.Values.Sum() * Pack.DefaultUnlistedFraction / (1 - Pack.DefaultUnlistedFraction);

    private Network Build(IReadOnlyList<Graded> order, ILookup<int, (Graded Parent, ShownGrades Shown)> parents)
    {
        var builder = new NetworkBuilder();
        foreach (var node in order)
        {
            if (node is Consequence consequence)
            {
                Add(builder, consequence, parents);
            }
            else
            {
                // The model lays its own priors over this one.
                _toNetwork[node.Node] = builder.AddRoot(node.Id, [0.5, 0.5]);
            }
        }

        return builder.Build();
    }

    private ILookup<int, (Graded Parent, ShownGrades Shown)> ParentsByChild() =>
        _pack.Nodes.Where(node => node.IsOn(_chassis))
            .SelectMany(parent => parent.Shows.Select(shown => (parent, shown)))
            .Where(pair => _pack.Nodes[pair.shown.Child].IsOn(_chassis))
            .ToLookup(pair => pair.shown.Child, pair => (pair.parent, pair.shown));

    /// <summary>Adds a child, whose parents are there already. What nothing shows stays out: it is known to rules, but says nothing about causes.</summary>
    private void Add(NetworkBuilder builder, Consequence child, ILookup<int, (Graded Parent, ShownGrades Shown)> parents)
    {
        if (child.Table is { } table)
        {
            var nodes = table.Parents.Select(NodeOf).ToArray();
            if (Array.TrueForAll(nodes, node => node >= 0))
            {
                _toNetwork[child.Node] = builder.AddTable(child.Id, child.Grades.Length, nodes, [.. table.Rows.SelectMany(row => row)]);
            }

            return;
        }

        Contribution[] contributions = [.. parents[child.Node]
            .Where(pair => NodeOf(pair.Parent.Node) >= 0)
            .OrderBy(pair => NodeOf(pair.Parent.Node))
            .Select(pair => Contribution.Of(NodeOf(pair.Parent.Node), [.. pair.Shown.ByGrade.Select(row => (IReadOnlyList<double>)row)]))];
        if (contributions.Length > 0)
        {
            _toNetwork[child.Node] = builder.AddGraded(child.Id, child.Grades.Length, Background(child), contributions);
        }
    }

    private Dictionary<int, IReadOnlyList<Graded>> ParentNodes(ILookup<int, (Graded Parent, ShownGrades Shown)> parents) =>
        _pack.Nodes.OfType<Consequence>().ToDictionary(
            child => child.Node,
            child => (IReadOnlyList<Graded>)(child.Table is { } table
                ? [.. table.Parents.Select(node => _pack.Nodes[node])]
                : [.. parents[child.Node].Select(pair => pair.Parent)]));

    private static double[] Background(Consequence child)
    {
        if (!child.Background.IsEmpty)
        {
            return [.. child.Background];
        }

        var healthy = new double[child.Grades.Length];
        healthy[0] = 1;
        return healthy;
    }
}
