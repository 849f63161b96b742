using System.Buffers;
using DiagRules.Reasoning.Inference.Tapes;

namespace DiagRules.Reasoning.Inference;

public sealed partial class CauseModel
{
    /// <summary>How probable each grade of each node is, cause by cause: what a check would show.</summary>
    /// <param name="evidence">What is known.</param>
    /// <param name="nodes">Nodes to predict: findings, effects or causes. Predicting many at once costs little more than one.</param>
    /// <returns>One prediction per node, in the order asked for.</returns>
    /// <exception cref="InferenceBudgetException">The tables would be larger than the limits allow.</exception>
    public IReadOnlyList<Prediction> Predict(CauseEvidence evidence, params ReadOnlySpan<int> nodes)
    {
        var settled = Settle(evidence, out var weights);
        var rows = new double[nodes.Length][];
        for (var i = 0; i < rows.Length; i++)
        {
            rows[i] = new double[(_causes.Length + 1) * Network.GradesOf(nodes[i])];
        }

        Engine.Predict(settled.Observations, _priors, _causes, nodes, rows);
        var predictions = new Prediction[nodes.Length];
        for (var i = 0; i < rows.Length; i++)
        {
            predictions[i] = ToPrediction(settled.Observations, nodes[i], rows[i], weights);
        }

        return predictions;
    }

    /// <summary>How probable each joint outcome of several nodes is, cause by cause: what a check that shows several things would show.</summary>
    /// <param name="evidence">What is known.</param>
    /// <param name="nodes">Nodes to predict, the most telling first.</param>
    /// <param name="mostOutcomes">
    /// How many joint outcomes to tell apart, 2 or more; each costs about as much as weighing once. Nodes are taken in the order given as long as their
    /// outcomes stay within this; the rest are named in <see cref="JointPrediction.LeftOut"/>. What a check is worth by the nodes taken is at most what it is
    /// worth by all.
    /// </param>
    /// <exception cref="ArgumentException">A node is named twice, or the first one alone has more grades than <paramref name="mostOutcomes"/>.</exception>
    /// <exception cref="InferenceBudgetException">The tables would be larger than the limits allow.</exception>
    public JointPrediction PredictTogether(CauseEvidence evidence, ReadOnlySpan<int> nodes, int mostOutcomes = 256)
    {
        var taken = TakeWithin(nodes, mostOutcomes, out var outcomes);
        var settled = Settle(evidence, out var weights);
        var joint = new OutcomeTable(this, taken, outcomes).Fill(settled.Observations, weights);
        return new JointPrediction(this, taken, nodes[taken.Length..].ToArray(), joint);
    }

    internal IReadOnlyList<double> AlsoPresent(Evidence evidence, int cause)
    {
        PositionOf(cause);
        var present = new double[_causes.Length];
        if (evidence.IsObserved(cause) && evidence.LikelihoodsOf(cause)[1] == 0)
        {
            return present;
        }

        evidence.Observe(cause, 1);
        var values = new double[Network.Offsets[^1]];
        Engine.InferRoots(evidence, _priors, _causes, values);
        for (var i = 0; i < present.Length; i++)
        {
            present[i] = values[Network.Offsets[_causes[i]] + 1];
        }

        return Array.AsReadOnly(present);
    }

    /// <summary>Joint outcomes as <see cref="InferenceEngine.Forecast(Evidence, ReadOnlySpan{double}, ReadOnlySpan{int}, ReadOnlySpan{int})"/> gives them.</summary>
    internal ForecastTable? Forecast(Evidence evidence, ReadOnlySpan<int> nodes) => Engine.Forecast(evidence, _priors, _causes, nodes);

    /// <summary><c>log P_q(e)</c>: how probable the evidence is with independent causes.</summary>
    internal double LogProbabilityOfListed(Evidence evidence) => Engine.LogProbability(evidence, _priors);

    /// <summary><c>P_q(X_i = present, e)</c> of each cause, divided by <c>exp(scale)</c>.</summary>
    /// <param name="evidence">The evidence with an outcome entered.</param>
    /// <param name="outcomeNodes">Nodes of the outcome; all their grades share one plan.</param>
    /// <param name="scale">Natural logarithm of the factor to take out.</param>
    /// <param name="weights">One number per cause.</param>
    /// <returns><c>P_q(e)</c>, divided by the same factor.</returns>
    internal double JointWeights(Evidence evidence, ReadOnlySpan<int> outcomeNodes, double scale, Span<double> weights)
    {
        var values = ArrayPool<double>.Shared.Rent(Network.Offsets[^1]);
        var log = Engine.InferRoots(evidence, _priors, _causes, outcomeNodes, values);
        var probability = double.IsNegativeInfinity(log) ? 0 : Math.Exp(log - scale);
        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] = values[Network.Offsets[_causes[i]] + 1] * probability;
        }

        ArrayPool<double>.Shared.Return(values);
        return probability;
    }

    /// <summary>Completes the rows: the last is for <c>Z = 0</c>, and causes out of the running get the overall prediction.</summary>
    private Prediction ToPrediction(Evidence evidence, int node, double[] rows, Weights weights)
    {
        var grades = Network.Nodes[node].Grades;
        var mean = new double[grades];
        if (HasPrimary)
        {
            UnlistedPosterior(evidence, node, rows.AsSpan(^grades..));
            for (var i = 0; i < rows.Length; i++)
            {
                mean[i % grades] += rows[i] * (weights.Numbers[i / grades] / weights.Total);
            }
        }
        else
        {
            rows.AsSpan(^grades..).CopyTo(mean);
        }

        for (var row = 0; row < rows.Length; row += grades)
        {
            if (!rows.AsSpan(row, grades).ContainsAnyExcept(0.0))
            {
                mean.CopyTo(rows, row);
            }
        }

        return new Prediction(this, node, rows, mean);
    }

    /// <summary>Under <c>Z = 0</c> observations are independent, so a node's own one is all that changes its marginal.</summary>
    internal void UnlistedPosterior(Evidence evidence, int node, Span<double> posterior)
    {
        MarginalOf(node).CopyTo(posterior);
        if (!evidence.IsObserved(node))
        {
            return;
        }

        var sum = Expectation(posterior, evidence.LikelihoodsOf(node));
        for (var grade = 0; grade < posterior.Length; grade++)
        {
            posterior[grade] = sum > 0 ? posterior[grade] * evidence.LikelihoodsOf(node)[grade] / sum : 0;
        }
    }

    private int[] TakeWithin(ReadOnlySpan<int> nodes, int mostOutcomes, out int outcomes)
    {
        var taken = new List<int>();
        outcomes = 1;
        foreach (var node in nodes)
        {
            if ((long)outcomes * Network.GradesOf(node) > mostOutcomes)
            {
                break;
            }

            outcomes *= Network.GradesOf(node);
            taken.Add(node);
        }

        if (taken.Count == 0 || taken.Distinct().Count() < taken.Count)
        {
            throw new ArgumentException(
                $"Found {nodes.Length} nodes to predict together within {mostOutcomes} outcomes; expected at least one, each once, the first within the limit.",
                nameof(nodes));
        }

        return [.. taken];
    }
}
