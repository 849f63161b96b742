namespace DiagRules.Reasoning.Planning.Search;

/// <summary>What a step costs and leaves open, given what is open.</summary>
/// <remarks>The contents of a state are the open accesses, then the gates: checks that repairs come after, set once these need not be waited for.</remarks>
internal abstract class StepCosts(CompiledSituation compiled)
{
    protected CompiledSituation Compiled => compiled;

    /// <summary>What is left open by a check, and its cost with access opened.</summary>
    internal abstract Bits AfterCheck(Bits contents, int check, out double cost);

    /// <summary>
    /// What is left open by a repair with the checks it comes after done first, whatever their answers; the cost of all that, infinite when one of
    /// the checks is withheld.
    /// </summary>
    internal abstract Bits AfterRepair(Bits contents, int repair, out double cost);

    /// <summary>What a repair and what must come before it cost at least, in whatever order things are done and whatever turns out pointless.</summary>
    internal abstract double LeastRepairCost(Bits contents, int repair);

    /// <summary>The check of a gate that is still shut, or -1 when it is withheld.</summary>
    protected int CheckOf(int gate) => compiled.CheckOfGate[gate - compiled.AccessCount];
}
