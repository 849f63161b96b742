namespace DiagRules.Packs.Values;

/// <summary>An amount of money.</summary>
/// <param name="Amount">How much.</param>
/// <param name="Currency">Three capital letters (ISO 4217).</param>
internal readonly record struct Money(double Amount, string Currency);
