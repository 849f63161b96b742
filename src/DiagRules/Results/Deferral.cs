namespace DiagRules.Results;

/// <summary>A check or repair that a rule keeps back. Immutable.</summary>
/// <param name="Id">Id of the check or repair.</param>
/// <param name="By">Id of the rule.</param>
/// <param name="Reason">Why, or <see langword="null"/>.</param>
public sealed record Deferral(string Id, string By, string? Reason);
