namespace DiagRules.Reasoning.Planning.Search;

/// <summary>An offered repair over the hypotheses that are still possible.</summary>
/// <param name="Index">Index in the situation.</param>
/// <param name="Cost">Cost without access.</param>
/// <param name="Needs">Accesses.</param>
/// <param name="Gates">Bits of the checks it comes after, by index of the check.</param>
/// <param name="Cures">What it cures among the possible hypotheses.</param>
/// <param name="Keeps">1 - cures per hypothesis, padded.</param>
internal sealed record CompiledRepair(int Index, double Cost, int[] Needs, int[] Gates, Cure[] Cures, double[] Keeps)
{
    internal bool IsWorthPlanning => Cures.Length > 0;
}
