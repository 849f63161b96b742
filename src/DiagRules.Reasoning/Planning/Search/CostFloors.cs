namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Lower bounds: what a job costs at least if one already knew what is wrong.</summary>
/// <remarks>
/// Whatever is wrong, a plan ends with the specialist or with a repair that cures it. So it costs no less than the cheapest of these with its
/// access opened, and no less than the best sequence of them with all access free (best by probability over cost: Kadane and Simon 1977).
/// A plan without that knowledge cannot do better on average, hence the weighted sum of the floors bounds the expected cost from below.
/// </remarks>
internal sealed class CostFloors
{
    private readonly CompiledSituation _compiled;
    private readonly double[] _withFreeAccess;

    internal CostFloors(CompiledSituation compiled)
    {
        _compiled = compiled;
        _withFreeAccess = new double[compiled.HypothesisCount];
        for (var h = 0; h < _withFreeAccess.Length; h++)
        {
            _withFreeAccess[h] = WithFreeAccess(compiled.RepairsOf[h]);
        }
    }

    internal double[] Compute(StepCosts costs, Bits contents)
    {
        var repairCosts = new double[_compiled.Repairs.Length];
        for (var r = 0; r < repairCosts.Length; r++)
        {
            repairCosts[r] = costs.LeastRepairCost(contents, r);
        }

        var floor = new double[_compiled.Width];
        for (var h = 0; h < _compiled.HypothesisCount; h++)
        {
            var cheapest = _compiled.SpecialistCost;
            foreach (var cure in _compiled.RepairsOf[h])
            {
                cheapest = Math.Min(cheapest, repairCosts[cure.Cause]);
            }

            floor[h] = Math.Max(cheapest, _withFreeAccess[h]);
        }

        return floor;
    }

    private double WithFreeAccess(Cure[] repairs)
    {
        var byRatio = repairs.OrderBy(c => _compiled.Repairs[c.Cause].Cost / c.Probability);
        var (spent, left) = (0.0, 1.0);
        var best = _compiled.SpecialistCost;
        foreach (var cure in byRatio)
        {
            spent += left * _compiled.Repairs[cure.Cause].Cost;
            left *= 1 - cure.Probability;
            best = Math.Min(best, spent + left * _compiled.SpecialistCost);
        }

        // Rounding may leave the sum a little above what a search adds up in another order.
        return best * (1 - 1e-12);
    }
}
