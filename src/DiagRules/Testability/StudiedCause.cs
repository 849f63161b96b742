namespace DiagRules.Testability;

/// <summary>A row of the matrix: a cause or precondition. Immutable.</summary>
/// <param name="Id">Id.</param>
/// <param name="Title">Title.</param>
/// <param name="Rate">Its part of all complaints that a listed cause is behind, 0..1.</param>
public sealed record StudiedCause(string Id, string Title, double Rate);
