using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

public sealed partial class CauseModel
{
    /// <summary>What each observation says for or against a cause, given all the others.</summary>
    /// <remarks>
    /// Each observation is weighed against the evidence without it, so the order in which they were made does not matter and the weights need not add up to the
    /// whole. Observations that cannot be carry none. With absolute probabilities the two sides are "present" and "absent", and repairs carry no weight.
    /// </remarks>
    /// <returns>One weight per observation in the order of the nodes, then one for all repairs tried in vain, if any.</returns>
    /// <exception cref="ArgumentException">The node is no cause of the model.</exception>
    /// <exception cref="InferenceBudgetException">The tables would be larger than the limits allow.</exception>
    public IReadOnlyList<ObservationWeight> Explain(CauseEvidence evidence, int cause)
    {
        PositionOf(cause);
        var settled = Settle(evidence, out _);
        var survival = settled.HasRepairs ? evidence.Survival : [];
        var all = SidesOf(settled.Observations, survival, cause);
        var without = settled.Observations.Copy();
        var weights = new List<ObservationWeight>();
        foreach (var node in settled.Observations.Observed)
        {
            without.Withdraw(node);
            weights.Add(new ObservationWeight(node, Decibans(all, SidesOf(without, survival, cause))));
            without.CopyFrom(settled.Observations, node);
        }

        if (settled.HasRepairs && HasPrimary)
        {
            weights.Add(new ObservationWeight(null, Decibans(all, SidesOf(settled.Observations, [], cause))));
        }

        return weights;
    }

    /// <summary>Natural logarithms of <c>P(Z = i, e)</c> and <c>P(Z != i, e)</c>, the second summed up rather than taken from 1.</summary>
    private (double For, double Against) SidesOf(Evidence evidence, ReadOnlySpan<double> survival, int cause)
    {
        if (!HasPrimary)
        {
            var values = new double[Network.Offsets[^1]];
            var log = Engine.InferRoots(evidence, _priors, [cause], values);
            var posterior = values.AsSpan(Network.Offsets[cause], 2);
            return (log + Math.Log(posterior[1]), log + Math.Log(posterior[0]));
        }

        var weights = WeightsOf(evidence, survival);
        var position = PositionOf(cause);
        var against = 0.0;
        for (var i = 0; i < weights.Numbers.Length; i++)
        {
            against += i == position ? 0 : weights.Numbers[i];
        }

        return (weights.LogScale + Math.Log(weights.Numbers[position]), weights.LogScale + Math.Log(against));
    }

    private static double Decibans((double For, double Against) with, (double For, double Against) without)
    {
        if (double.IsNegativeInfinity(without.For) || double.IsNegativeInfinity(without.Against))
        {
            return 0;
        }

        return 10 / Math.Log(10) * (with.For - without.For - (with.Against - without.Against));
    }
}
