using System.Collections.Immutable;

namespace DiagRules.Results;

/// <summary>A finding or cause about which what is known does not agree; it is left out until that is settled. Immutable.</summary>
/// <param name="Finding">Id.</param>
/// <param name="Title">Title.</param>
/// <param name="Sides">The sides, each a grade and where it comes from.</param>
public sealed record Contradiction(string Finding, string Title, ImmutableArray<ContradictionSide> Sides);

/// <summary>One side of a contradiction. Immutable.</summary>
/// <param name="Grade">The grade, or several joined by <c>or</c>.</param>
/// <param name="From"><c>observation</c>, <c>complaint</c>, <c>readings</c>, or the id of a rule.</param>
public sealed record ContradictionSide(string Grade, string From);
