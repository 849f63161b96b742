namespace DiagRules.Reasoning.Planning.Search;

/// <summary>A whole plan as what it costs under each hypothesis. Its expected cost is linear in the weights, wherever it can be followed.</summary>
/// <remarks>The idea behind point-based value iteration (Pineau, Gordon and Thrun 2003), here over what has been done as well.</remarks>
/// <param name="Costs">Expected cost per hypothesis, padded.</param>
/// <param name="Start">What is open when it begins.</param>
/// <param name="Checks">The checks in it; where one of them cannot be done any more, nor can the plan.</param>
/// <param name="Repairs">The repairs in it, likewise.</param>
internal sealed record PlanVector(double[] Costs, OpenState Start, Bits Checks, Bits Repairs)
{
    /// <summary>Handing over at once.</summary>
    internal static PlanVector Specialist(CompiledSituation compiled, OpenState start)
    {
        var costs = new double[compiled.Width];
        Array.Fill(costs, compiled.SpecialistCost, 0, compiled.HypothesisCount);
        return new PlanVector(costs, start, Bits.Empty(compiled.Checks.Length), Bits.Empty(compiled.Repairs.Length));
    }

    /// <summary>Repairs one after the other, then handing over.</summary>
    internal static PlanVector Sequence(CompiledSituation compiled, OpenState start, List<RepairTrace> sequence)
    {
        var costs = new double[compiled.Width];
        var left = new double[compiled.Width];
        Array.Fill(left, 1, 0, compiled.HypothesisCount);
        var repairs = Bits.Empty(compiled.Repairs.Length);
        foreach (var step in sequence)
        {
            Weights.AddScaled(left, step.Cost, costs);
            Weights.Multiply(left, compiled.Repairs[step.Repair].Keeps, left);
            repairs = repairs.With(step.Repair);
        }

        Weights.AddScaled(left, compiled.SpecialistCost, costs);
        return new PlanVector(costs, start, Bits.Empty(compiled.Checks.Length), repairs);
    }

    /// <summary>A step whose continuations have been added to the costs.</summary>
    internal static PlanVector After(double[] costs, OpenState start, int check, int repair, IEnumerable<PlanVector> continuations, CompiledSituation compiled)
    {
        var checks = Bits.Empty(compiled.Checks.Length);
        var repairs = Bits.Empty(compiled.Repairs.Length);
        foreach (var next in continuations)
        {
            checks = checks.Union(next.Checks);
            repairs = repairs.Union(next.Repairs);
        }

        return new PlanVector(costs, start, check >= 0 ? checks.With(check) : checks, repair >= 0 ? repairs.With(repair) : repairs);
    }
}
