namespace DiagRules.Testability;

/// <summary>A column of the matrix: a check or the question of a finding. Immutable.</summary>
/// <param name="Id">Id.</param>
/// <param name="Title">Title.</param>
/// <param name="DecidesNothing">
/// Whether what it gives settles no weighed finding by itself: it only serves rules, or its readings need those of another check.
/// </param>
public sealed record StudiedCheck(string Id, string Title, bool DecidesNothing);
