namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// A whole plan: what is done first, what then after each answer, and what all of it costs under each hypothesis. Its expected cost is linear in the
/// weights, wherever it can be followed as it stands.
/// </summary>
/// <remarks>The idea behind point-based value iteration (Pineau, Gordon and Thrun 2003), here over what has been done as well.</remarks>
/// <param name="Costs">Expected cost per hypothesis, padded.</param>
/// <param name="Start">What is open when it begins.</param>
/// <param name="Step">What is done first: a check, or the complement of a repair; <see cref="Ending"/> for repairs without further checks.</param>
/// <param name="Next">The plan after each answer of the check, or after the repair in vain.</param>
/// <param name="Order">The repairs of a plan that only tries repairs; else empty.</param>
/// <param name="Checks">The checks in it; where one of them cannot be done any more, the plan cannot be followed as it stands.</param>
/// <param name="Repairs">The repairs in it, likewise.</param>
internal sealed record PlanVector(double[] Costs, OpenState Start, int Step, PlanVector[] Next, int[] Order, Bits Checks, Bits Repairs)
{
    /// <summary>The step of a plan that only tries repairs, then hands over.</summary>
    internal const int Ending = int.MaxValue;

    /// <summary>Handing over at once.</summary>
    internal static PlanVector Specialist(CompiledSituation compiled, OpenState start)
    {
        var costs = new double[compiled.Width];
        Array.Fill(costs, compiled.SpecialistCost, 0, compiled.HypothesisCount);
        return new PlanVector(costs, start, Ending, [], [], Bits.Empty(compiled.Checks.Length), Bits.Empty(compiled.Repairs.Length));
    }

    /// <summary>Repairs one after the other, then handing over.</summary>
    internal static PlanVector Sequence(CompiledSituation compiled, OpenState start, int[] order)
    {
        var costs = new double[compiled.Width];
        var left = new double[compiled.Width];
        Array.Fill(left, 1, 0, compiled.HypothesisCount);
        var repairs = Bits.Empty(compiled.Repairs.Length);
        var state = start;
        foreach (var repair in order)
        {
            Weights.AddScaled(left, state.RepairCosts[repair], costs);
            Weights.Multiply(left, compiled.Repairs[repair].Keeps, left);
            state = state.AfterRepair(repair);
            repairs.Set(repair, true);
        }

        Weights.AddScaled(left, compiled.SpecialistCost, costs);
        return new PlanVector(costs, start, Ending, [], order, Bits.Empty(compiled.Checks.Length), repairs);
    }

    /// <summary>A check, then a plan for each of its answers.</summary>
    internal static PlanVector AfterCheck(CompiledSituation compiled, OpenState start, int check, PlanVector[] next)
    {
        start.AfterCheck(check, out var cost);
        var costs = new double[compiled.Width];
        Array.Fill(costs, cost, 0, compiled.HypothesisCount);
        for (var o = 0; o < next.Length; o++)
        {
            Weights.AddProduct(compiled.Checks[check].Outcomes[o].Likelihood, next[o].Costs, costs);
        }

        return Join(compiled, costs, start, check, next);
    }

    /// <summary>A repair, then a plan for when it was in vain.</summary>
    internal static PlanVector AfterRepair(CompiledSituation compiled, OpenState start, int repair, PlanVector next)
    {
        var costs = new double[compiled.Width];
        Array.Fill(costs, start.RepairCosts[repair], 0, compiled.HypothesisCount);
        Weights.AddProduct(compiled.Repairs[repair].Keeps, next.Costs, costs);
        return Join(compiled, costs, start, ~repair, [next]);
    }

    private static PlanVector Join(CompiledSituation compiled, double[] costs, OpenState start, int step, PlanVector[] next)
    {
        var checks = Bits.Empty(compiled.Checks.Length);
        var repairs = Bits.Empty(compiled.Repairs.Length);
        foreach (var plan in next)
        {
            checks = checks.Union(plan.Checks);
            repairs = repairs.Union(plan.Repairs);
        }

        return new PlanVector(costs, start, step, next, [], step >= 0 ? checks.With(step) : checks, step < 0 ? repairs.With(~step) : repairs);
    }
}
