namespace DiagRules.Replay;

/// <summary>A place in the ranking of a replayed case. Immutable.</summary>
/// <param name="Cause">Id of a cause or precondition, or <c>unlisted</c>.</param>
/// <param name="Confidence">Its confidence, 0..1.</param>
public readonly record struct RankedCause(string Cause, double Confidence);
