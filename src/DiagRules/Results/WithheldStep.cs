namespace DiagRules.Results;

/// <summary>A check or repair that is not offered. Immutable.</summary>
/// <param name="Id">Id of the check or repair.</param>
/// <param name="Title">Title.</param>
/// <param name="Because">Why, as a plain sentence.</param>
public sealed record WithheldStep(string Id, string Title, string Because);
