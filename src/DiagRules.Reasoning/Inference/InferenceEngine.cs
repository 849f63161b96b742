using System.Collections.Concurrent;
using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

/// <summary>Answers questions about a <see cref="Network"/> exactly, by eliminating one node after the other.</summary>
/// <remarks>
/// <para>
/// Elimination plans are kept by the shape of a question: which nodes are seen at their first grade, which at a later one, which softly, and which are asked
/// for. A question of a known shape makes no plan and no tables. Nodes that bear on nothing asked or seen cost nothing.
/// </para>
/// <para>Thread-safe: any number of threads may ask at once, and each question gets the same digits whoever else asks.</para>
/// </remarks>
public sealed partial class InferenceEngine
{
    private readonly PlanCache _plans;
    private readonly ConcurrentBag<Workspace> _idle = [];

    /// <summary>An engine for one network.</summary>
    /// <param name="network">The network.</param>
    /// <param name="limits">How much it may use; <see cref="InferenceLimits.Default"/> if null.</param>
    public InferenceEngine(Network network, InferenceLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(network);
        Network = network;
        Limits = limits ?? InferenceLimits.Default;
        _plans = new PlanCache(Limits.CachedPlans, Limits.CachedCells);
    }

    /// <summary>The network.</summary>
    public Network Network { get; }

    /// <summary>How much the engine may use.</summary>
    public InferenceLimits Limits { get; }

    /// <summary>Number of plans kept at the moment.</summary>
    public int CachedPlans => _plans.Count;

    /// <summary>Natural logarithm of the probability of the evidence; negative infinity if the network cannot produce it.</summary>
    /// <exception cref="InferenceBudgetException">The tables would be larger than the limits allow.</exception>
    public double LogProbability(Evidence evidence)
    {
        Require(evidence);
        return LogProbability(evidence, Network.Priors);
    }

    /// <summary>What a question would cost. Makes a plan but no tables, and never raises <see cref="InferenceBudgetException"/>.</summary>
    /// <param name="evidence">The evidence.</param>
    /// <param name="nodes">Nodes whose posteriors are asked for; those of roots come at no extra cost.</param>
    public InferenceEstimate Estimate(Evidence evidence, params ReadOnlySpan<int> nodes)
    {
        Require(evidence);
        return Estimate(evidence, Network.Priors, nodes);
    }

    /// <summary>Posteriors of all nodes in one forward and one backward pass.</summary>
    /// <remarks>
    /// Where tables over all nodes would be large, nodes nothing was seen of or below are asked grade by grade instead, with a pass for each grade.
    /// </remarks>
    /// <exception cref="InferenceBudgetException">The tables would be larger than the limits allow.</exception>
    public Posteriors Infer(Evidence evidence) => Infer(evidence, [.. Enumerable.Range(0, Network.Count)]);

    /// <summary>Posteriors of the nodes asked for, in one forward and one backward pass.</summary>
    /// <exception cref="InferenceBudgetException">The tables would be larger than the limits allow.</exception>
    public Posteriors Infer(Evidence evidence, params ReadOnlySpan<int> nodes)
    {
        Require(evidence);
        var asked = new bool[Network.Count];
        foreach (var node in nodes)
        {
            asked[Network.Checked(node)] = true;
        }

        var values = new double[Network.Offsets[^1]];
        return new Posteriors(Network, values, asked, Infer(evidence, Network.Priors, nodes, values));
    }

    /// <summary>Joint posterior of two nodes.</summary>
    /// <exception cref="ArgumentException">Both are the same node.</exception>
    /// <exception cref="InferenceBudgetException">The tables would be larger than the limits allow.</exception>
    public JointPosterior Joint(Evidence evidence, int first, int second)
    {
        Require(evidence);
        int columns = Network.GradesOf(second), rows = Network.GradesOf(first);
        if (first == second)
        {
            throw new ArgumentException($"Asked for the joint posterior of '{Network.NameOf(first)}' with itself; expected two nodes.", nameof(second));
        }

        var cells = new double[rows * columns];
        return new JointPosterior(cells, columns, Joint(evidence, first, second, cells));
    }

    /// <summary>The most probable grades of all nodes not seen for certain, together.</summary>
    /// <exception cref="InferenceBudgetException">The tables would be larger than the limits allow.</exception>
    public MostProbableExplanation MostProbable(Evidence evidence)
    {
        Require(evidence);
        return MostProbable(evidence, [.. Enumerable.Range(0, Network.Count).Where(node => !evidence.StateOf(node).IsCertain)]);
    }

    /// <summary>The most probable grades of some nodes together, whatever the others are. Of equally probable ones the earlier grades.</summary>
    /// <remarks>Costs more than posteriors: the other nodes have to be summed out first.</remarks>
    /// <exception cref="InferenceBudgetException">The tables would be larger than the limits allow.</exception>
    public MostProbableExplanation MostProbable(Evidence evidence, params ReadOnlySpan<int> nodes)
    {
        Require(evidence);
        foreach (var node in nodes)
        {
            Network.Checked(node);
        }

        var total = LogProbability(evidence);
        return double.IsNegativeInfinity(total)
            ? new MostProbableExplanation(new Dictionary<int, int>(), total, total)
            : MostProbable(evidence, nodes, total);
    }
}
