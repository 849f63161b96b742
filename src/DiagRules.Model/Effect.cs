namespace DiagRules.Model;

/// <summary>A graded state inside the machine that nobody observes directly. Immutable.</summary>
public sealed record Effect : Consequence;
