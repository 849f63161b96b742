namespace DiagRules.Reasoning.Inference;

/// <summary>Probabilities of grades given the evidence. Immutable and thread-safe.</summary>
public sealed class Posteriors
{
    private readonly Network _network;
    private readonly double[] _values;
    private readonly bool[] _asked;

    internal Posteriors(Network network, double[] values, bool[] asked, double logProbability)
    {
        _network = network;
        _values = values;
        _asked = asked;
        LogProbability = logProbability;
    }

    /// <summary>Natural logarithm of the probability of the evidence; negative infinity if it cannot be.</summary>
    public double LogProbability { get; }

    /// <summary>Probability of the evidence; 0 if it cannot be, or if it is below 1e-308: then see <see cref="LogProbability"/>.</summary>
    public double Probability => Math.Exp(LogProbability);

    /// <summary>Whether the network cannot produce the evidence at all. Every posterior is 0 then.</summary>
    public bool IsImpossible => double.IsNegativeInfinity(LogProbability);

    /// <summary>Posterior probability of each grade of a node.</summary>
    /// <exception cref="ArgumentException">The question did not ask for this node.</exception>
    public ReadOnlySpan<double> Of(int node)
    {
        if (!_asked[_network.Checked(node)])
        {
            throw new ArgumentException($"'{_network.NameOf(node)}' was not asked for; name it in the question.", nameof(node));
        }

        return _values.AsSpan(_network.Offsets[node], _network.Nodes[node].Grades);
    }

    /// <summary>Posterior probability of one grade.</summary>
    /// <exception cref="ArgumentException">The question did not ask for this node.</exception>
    public double Of(int node, int grade) => Of(node)[grade];
}
