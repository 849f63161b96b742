namespace DiagRules.Reasoning.Planning;

/// <summary>How surely a repair cures one cause.</summary>
/// <param name="Cause">Index of the cause in <see cref="Situation.Probabilities"/>.</param>
/// <param name="Probability">The probability that the complaint is gone after the repair when this is the primary cause; 0..1.</param>
public readonly record struct Cure(int Cause, double Probability);
