using DiagRules.Model.Problems;

namespace DiagRules;

/// <summary>What became of an observation. Immutable.</summary>
/// <param name="IsAccepted">Whether it is on the session's record.</param>
/// <param name="IsUsed">Whether it counts; an implausible value is kept on record and used for nothing.</param>
/// <param name="Problem">What is wrong with it, or <see langword="null"/>.</param>
public sealed record ObserveResult(bool IsAccepted, bool IsUsed, Problem? Problem);
