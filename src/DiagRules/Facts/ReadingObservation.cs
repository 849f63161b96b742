namespace DiagRules.Facts;

/// <summary>A measured value that counts.</summary>
/// <param name="Si">Value in SI; an infinity when beyond the meter's range.</param>
/// <param name="Trust">How far it is believed, 0..1.</param>
internal readonly record struct ReadingObservation(double Si, double Trust);
