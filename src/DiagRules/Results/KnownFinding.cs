using System.Collections.Immutable;

namespace DiagRules.Results;

/// <summary>A finding or cause of which something is known. Immutable.</summary>
/// <param name="Finding">Id.</param>
/// <param name="Title">Title.</param>
/// <param name="Grade">The grade; several still open are joined by <c>or</c>.</param>
/// <param name="From">What it rests on: <c>observation</c>, <c>complaint</c>, <c>readings</c>, or ids of rules.</param>
/// <param name="Trust">How far it is believed, 0..1.</param>
public sealed record KnownFinding(string Finding, string Title, string Grade, ImmutableArray<string> From, double Trust);
