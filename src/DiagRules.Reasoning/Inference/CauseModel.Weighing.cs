using System.Buffers;
using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

public sealed partial class CauseModel
{
    /// <summary>Weighs the causes in one forward and one backward pass.</summary>
    /// <remarks>
    /// Observations that cannot be are left out and named (<see cref="Weighing.LeftOut"/>): first each that cannot be by itself; if the rest still cannot be
    /// together, the fewest more, and of as few the set whose absence leaves the rest most probable.
    /// </remarks>
    /// <exception cref="InferenceBudgetException">The tables would be larger than the limits allow.</exception>
    public Weighing Weigh(CauseEvidence evidence)
    {
        var settled = Settle(evidence, out var weights);
        return new Weighing(this, settled, weights);
    }

    /// <summary>What weighing would cost; makes a plan but no tables.</summary>
    public InferenceEstimate Estimate(CauseEvidence evidence)
    {
        Require(evidence);
        return Engine.Estimate(evidence.Observations, _priors, []);
    }

    /// <summary><c>m_k</c>: how probable each grade of a node is under <c>Z = 0</c>, that is, on any complaint with a listed cause.</summary>
    /// <remarks>For a cause it is what the model says of its coexistence, <c>1 - q_i</c> and <c>q_i</c>. Computed when first needed.</remarks>
    /// <exception cref="InvalidOperationException">The model has absolute probabilities and so no <c>Z</c>.</exception>
    public ReadOnlySpan<double> MarginalOf(int node)
    {
        if (!HasPrimary)
        {
            throw new InvalidOperationException("This model has absolute probabilities; what is not listed belongs to a model with shares.");
        }

        ref var marginal = ref _marginals[Network.Checked(node)];
        return Volatile.Read(ref marginal) ?? Interlocked.CompareExchange(ref marginal, ComputeMarginal(node), null) ?? marginal;
    }

    /// <summary>Leaves out what cannot be. Where nothing has to be left out this is one weighing.</summary>
    internal SettledEvidence Settle(CauseEvidence evidence, out Weights weights)
    {
        Require(evidence);
        weights = WeightsOf(evidence.Observations, evidence.Survival);
        if (!weights.IsZero)
        {
            return new SettledEvidence(evidence.Observations, [], evidence.HasFailedRepairs, areRepairsLeftOut: false);
        }

        var observations = evidence.Observations;
        int[] leftOut = [];
        if (WeightsOf(observations, []).IsZero)
        {
            leftOut = new ImpossibleObservations(e => WeightsOf(e, []).LogTotal).Find(observations);
            observations = observations.Copy();
            Array.ForEach(leftOut, observations.Withdraw);
            weights = WeightsOf(observations, evidence.Survival);
        }

        var areRepairsLeftOut = weights.IsZero;
        weights = areRepairsLeftOut ? WeightsOf(observations, []) : weights;
        return new SettledEvidence(observations, leftOut, evidence.HasFailedRepairs && !areRepairsLeftOut, areRepairsLeftOut);
    }

    /// <summary><c>P(Z = i, e)</c> for every cause and, last, for <c>Z = 0</c>; with absolute probabilities <c>P(X_i = present, e)</c>.</summary>
    /// <param name="evidence">What was observed.</param>
    /// <param name="survival">What failed repairs leave of each cause's weight, by node; empty for all of it.</param>
    internal Weights WeightsOf(Evidence evidence, ReadOnlySpan<double> survival)
    {
        var values = ArrayPool<double>.Shared.Rent(Network.Offsets[^1]);
        try
        {
            var log = Engine.InferRoots(evidence, _priors, _causes, values);
            var logOfUnlisted = HasPrimary && PriorOfUnlisted > 0 ? Math.Log(PriorOfUnlisted) + LogLikelihoodOfUnlisted(evidence) : double.NegativeInfinity;
            return ToWeights(values, log, logOfUnlisted, survival);
        }
        finally
        {
            ArrayPool<double>.Shared.Return(values);
        }
    }

    private Weights ToWeights(double[] values, double log, double logOfUnlisted, ReadOnlySpan<double> survival)
    {
        var scale = Math.Max(log, logOfUnlisted);
        var numbers = new double[_causes.Length + 1];
        if (double.IsNegativeInfinity(scale))
        {
            return new Weights(numbers, 0, scale);
        }

        var perPosterior = Math.Exp(log - scale) / Coexistence;
        for (var i = 0; i < _causes.Length; i++)
        {
            numbers[i] = values[Network.Offsets[_causes[i]] + 1] * perPosterior * (survival.IsEmpty ? 1 : survival[_causes[i]]);
        }

        numbers[^1] = Math.Exp(logOfUnlisted - scale);
        return new Weights(numbers, HasPrimary ? numbers.Sum() : 1, scale);
    }

    /// <summary><c>log P(e | Z = 0)</c>, the sum over observations of <c>log sum over g of m_k(g) lambda_k(g)</c>.</summary>
    private double LogLikelihoodOfUnlisted(Evidence evidence)
    {
        var likelihood = new LogProduct();
        var logScale = 0.0;
        for (var node = 0; node < Network.Count; node++)
        {
            var state = evidence.StateOf(node);
            logScale += state.LogScale;
            if (state.Kind != StateKind.None)
            {
                likelihood.Multiply(Expectation(MarginalOf(node), evidence.LikelihoodsOf(node)));
            }
        }

        return likelihood.Log + logScale;
    }

    private static double Expectation(ReadOnlySpan<double> distribution, ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        for (var i = 0; i < distribution.Length; i++)
        {
            sum += distribution[i] * values[i];
        }

        return sum;
    }

    private double[] ComputeMarginal(int node)
    {
        if (_positions[node] >= 0)
        {
            return _priors[Network.Offsets[node]..Network.Offsets[node + 1]];
        }

        var grades = Network.Nodes[node].Grades;
        var rows = new double[(_causes.Length + 1) * grades];
        Engine.Predict(new Evidence(Network), _priors, _causes, [node], [rows]);
        var marginal = new double[grades];
        var listed = _pi.Sum();
        for (var i = 0; i < _causes.Length * grades; i++)
        {
            marginal[i % grades] += rows[i] * (_pi[i / grades] / listed);
        }

        return marginal;
    }

    private void Require(CauseEvidence evidence)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        if (evidence.Observations.Network != Network)
        {
            throw new ArgumentException("The evidence is about another network; expected this model's network.", nameof(evidence));
        }
    }
}
