using DiagRules.Model.Conditions;

namespace DiagRules.Facts;

/// <summary>A call of a calculation where a pack writes it.</summary>
/// <param name="Entry">Id of the entry.</param>
/// <param name="IsReading">Whether it is a derived reading, so that the entry as a whole hangs on the call; else it is a condition.</param>
/// <param name="Call">The call.</param>
internal sealed record WrittenCall(string Entry, bool IsReading, CallTerm Call);
