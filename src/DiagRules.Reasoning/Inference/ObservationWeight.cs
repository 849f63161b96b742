namespace DiagRules.Reasoning.Inference;

/// <summary>How far one observation speaks for or against a cause (Good 1950). Immutable.</summary>
/// <param name="Node">The observed node; null for all repairs tried in vain together.</param>
/// <param name="Decibans">
/// <c>10 log10( P(e_k | Z = i, other evidence) / P(e_k | Z != i, other evidence) )</c>. Above 0 it speaks for the cause, below 0 against it; 10 is a factor of
/// ten in the odds. Negative infinity: it excludes the cause. Positive infinity: it excludes everything else. 0 where the rest alone leaves no doubt.
/// </param>
public sealed record ObservationWeight(int? Node, double Decibans);
