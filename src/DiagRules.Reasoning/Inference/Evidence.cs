using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

/// <summary>What has been observed: for each node nothing, a grade, or a likelihood per grade.</summary>
/// <remarks>
/// The newest observation of a node replaces the older one, and the order in which nodes are observed never matters. Mutable, cheap to clear and to copy;
/// not thread-safe.
/// </remarks>
public sealed class Evidence
{
    private readonly NodeState[] _states;
    private readonly double[] _likelihoods;

    /// <summary>Evidence about the nodes of <paramref name="network"/>, with nothing observed yet.</summary>
    public Evidence(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        Network = network;
        _states = new NodeState[network.Count];
        _likelihoods = new double[network.Offsets[^1]];
    }

    /// <summary>The network this is about.</summary>
    public Network Network { get; }

    /// <summary>Whether nothing is observed.</summary>
    public bool IsEmpty => !_states.AsSpan().ContainsAnyExcept(default(NodeState));

    /// <summary>Observed nodes, ascending.</summary>
    public IEnumerable<int> Observed => Enumerable.Range(0, _states.Length).Where(IsObserved);

    /// <summary>Whether anything is observed of a node.</summary>
    public bool IsObserved(int node) => _states[Network.Checked(node)].Kind != StateKind.None;

    /// <summary>Observes the grade of a node.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such node or grade.</exception>
    public void Observe(int node, int grade)
    {
        var grades = Network.GradesOf(node);
        if ((uint)grade >= (uint)grades)
        {
            throw new ArgumentOutOfRangeException(nameof(grade), grade, $"'{Network.NameOf(node)}' has grades 0 to {grades - 1}.");
        }

        var values = _likelihoods.AsSpan(Network.Offsets[node], grades);
        values.Clear();
        values[grade] = 1;
        _states[node] = NodeState.Simplified(values);
    }

    /// <summary>Observes a node softly: how probable what was seen is under each of its grades (Pearl 1988, virtual evidence).</summary>
    /// <param name="node">Node number.</param>
    /// <param name="likelihoods">
    /// One finite number of 0 or more per grade, not all 0; only their ratios bear on the posteriors, their size on the probability of the evidence.
    /// All the same says nothing; all but one 0 is a grade for certain.
    /// </param>
    /// <exception cref="ArgumentException">The likelihoods are too few or too many, negative, not finite, or all 0.</exception>
    public void Observe(int node, ReadOnlySpan<double> likelihoods)
    {
        var grades = Network.GradesOf(node);
        if (likelihoods.Length != grades)
        {
            throw new ArgumentException(
                $"Found {likelihoods.Length} likelihoods for '{Network.NameOf(node)}'; expected {grades}, one per grade.",
                nameof(likelihoods));
        }

        foreach (var likelihood in likelihoods)
        {
            if (!(likelihood >= 0 && double.IsFinite(likelihood)))
            {
                throw new ArgumentException(
                    $"Found the likelihood {Distribution.Text(likelihood)} for '{Network.NameOf(node)}'; expected a finite number of 0 or more.",
                    nameof(likelihoods));
            }
        }

        if (!likelihoods.ContainsAnyExcept(0.0))
        {
            throw new ArgumentException(
                $"All likelihoods of '{Network.NameOf(node)}' are 0; expected one that is not, since something was seen.",
                nameof(likelihoods));
        }

        var values = _likelihoods.AsSpan(Network.Offsets[node], grades);
        likelihoods.CopyTo(values);
        _states[node] = NodeState.Simplified(values);
    }

    /// <summary>Takes back what was observed of a node; nothing happens if nothing was.</summary>
    public void Withdraw(int node) => _states[Network.Checked(node)] = default;

    /// <summary>Takes back everything.</summary>
    public void Clear() => Array.Clear(_states);

    /// <summary>An independent copy.</summary>
    public Evidence Copy()
    {
        var copy = new Evidence(Network);
        copy.CopyFrom(this);
        return copy;
    }

    /// <summary>Makes this the same as <paramref name="other"/>, which must be about the same network.</summary>
    /// <exception cref="ArgumentException"><paramref name="other"/> is about another network.</exception>
    public void CopyFrom(Evidence other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (other.Network != Network)
        {
            throw new ArgumentException("The evidence is about another network; expected the network this evidence was made for.", nameof(other));
        }

        other._states.CopyTo(_states, 0);
        other._likelihoods.CopyTo(_likelihoods, 0);
    }

    /// <summary>Takes over what <paramref name="other"/> says of one node.</summary>
    internal void CopyFrom(Evidence other, int node)
    {
        _states[node] = other._states[node];
        other.LikelihoodsOf(node).CopyTo(_likelihoods.AsSpan(Network.Offsets[node]));
    }

    internal ref readonly NodeState StateOf(int node) => ref _states[node];

    /// <summary>Likelihood per grade of an observed node, divided by <see cref="NodeState.Scale"/>.</summary>
    internal ReadOnlySpan<double> LikelihoodsOf(int node) => _likelihoods.AsSpan(Network.Offsets[node], Network.Nodes[node].Grades);
}
