namespace DiagRules.Reasoning.Planning;

/// <summary>One repair of a sequence without further checks.</summary>
/// <param name="Repair">Index of the repair.</param>
/// <param name="Cost">What it costs at its place in the sequence, with access opened and the checks it comes after done.</param>
/// <param name="Reached">The probability that the sequence gets as far as this.</param>
/// <param name="Cured">The probability that this repair ends the complaint, seen from the start of the sequence; 0..<paramref name="Reached"/>.</param>
public sealed record PlannedRepair(int Repair, double Cost, double Reached, double Cured);
