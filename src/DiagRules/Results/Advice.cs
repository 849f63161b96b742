namespace DiagRules.Results;

/// <summary>Advice of a rule that holds. Immutable.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Text">The advice.</param>
/// <param name="Reason">Why, or <see langword="null"/>.</param>
public sealed record Advice(string Rule, string Text, string? Reason);
