namespace DiagRules.Reasoning.Planning.Search;

/// <summary>An offered check over the hypotheses that are still possible.</summary>
/// <param name="Index">Index in the situation.</param>
/// <param name="Cost">Cost without access.</param>
/// <param name="Needs">Accesses.</param>
/// <param name="Gate">Its bit in <see cref="OpenState"/> when a repair comes after it; -1 otherwise.</param>
/// <param name="Outcomes">The answers that are possible.</param>
/// <param name="IsWorthPlanning">False when it can neither tell hypotheses apart nor clear the way for a repair.</param>
/// <param name="Doubt">How uncertain the answer is even under a known hypothesis: its entropy in nats, padded.</param>
internal sealed record CompiledCheck(
    int Index, double Cost, int[] Needs, int Gate, CompiledOutcome[] Outcomes, bool IsWorthPlanning, double[] Doubt);

/// <param name="Index">Index in the situation.</param>
/// <param name="Likelihood">P(answer | hypothesis), padded.</param>
/// <param name="Pointless">Compiled checks that need not be done any more.</param>
/// <param name="Gates">Bits of checks that repairs need not wait for any more.</param>
internal sealed record CompiledOutcome(int Index, double[] Likelihood, int[] Pointless, int[] Gates);
