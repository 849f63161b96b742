using System.Collections.Immutable;

namespace DiagRules.Model;

/// <summary>A check that proves a repair. Immutable.</summary>
/// <param name="Check">Id of the check.</param>
/// <param name="Times">How often, where the fault came and went.</param>
/// <param name="Findings">The findings that must come out at their first grade; empty means all that the check gives.</param>
public sealed record Verification(string Check, int Times, ImmutableArray<string> Findings);
