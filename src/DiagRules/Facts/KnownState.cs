using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Rules;

namespace DiagRules.Facts;

/// <summary>What is known of every finding and cause once the rules have come to rest.</summary>
internal sealed class KnownState
{
    private readonly ObservedState _observed;
    private readonly Views _views;
    private readonly ILookup<int, Support> _concluded;
    private readonly NodeState?[] _nodes;
    private readonly bool[] _isRead;

    public KnownState(ObservedState observed, IReadOnlyList<Support> supports, Views views)
    {
        _observed = observed;
        _views = views;
        _concluded = supports.ToLookup(support => support.Node);
        _nodes = new NodeState?[observed.Nodes.Length];
        _isRead = new bool[_nodes.Length];
        for (var node = 0; node < _nodes.Length; node++)
        {
            Tell(node);
        }
    }

    /// <summary>What is known of a node, contradictions included; <see langword="null"/> when nothing speaks about it.</summary>
    public NodeState? this[int node] => Read(node);

    /// <summary>All nodes about which something speaks, in order.</summary>
    public IEnumerable<NodeState> All => _nodes.OfType<NodeState>();

    private NodeState? Read(int node)
    {
        if (_isRead[node])
        {
            return _nodes[node];
        }

        _isRead[node] = true;
        var sides = new List<NodeObservation>();
        if (_observed.Nodes[node] is { } seen)
        {
            sides.Add(seen);
        }

        foreach (var line in _concluded[node].Select(support => support.Line!).Distinct())
        {
            var from = line.Kind is LineKind.Read ? NodeObservation.Readings : line.Source;
            sides.Add(new NodeObservation(line.Grades, TrustOf(line), from));
        }

        if (_observed.PatternClash is { } clash && node == _views.PatternNode)
        {
            sides.Add(clash.Said);
            sides.Add(clash.Worked);
        }

        return _nodes[node] = sides.Count == 0 ? null : new NodeState(node, [.. sides.Distinct()]);
    }

    /// <summary>Conditions judged afterwards (<c>skip-if</c>) look at the agreed grades.</summary>
    private void Tell(int node)
    {
        var state = Read(node);
        var grades = state?.Grades ?? GradeSet.None;
        _views.Lenient.Known[node] = grades;
        _views.Strict.Known[node] = state is { Trust: >= Observation.RuleThreshold } ? grades : GradeSet.None;
    }

    /// <summary>A conclusion is believed as far as the least believed thing it rests on.</summary>
    private double TrustOf(RuleLine line)
    {
        var trust = 1.0;
        foreach (var reading in Dependence.MeasuredIn(line.When, _views.Pack).Where(reading => _observed.Readings[reading] is not null))
        {
            trust = Math.Min(trust, _views.TrustOf(reading));
        }

        foreach (var node in Dependence.NodesIn(line.When))
        {
            trust = Math.Min(trust, Read(node)?.Trust ?? 1);
        }

        return trust;
    }
}
