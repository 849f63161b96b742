namespace DiagRules.Reasoning.Testability;

/// <summary>A cause whose checks are all shown, and more, by another one.</summary>
/// <param name="Cause">The one that goes unnoticed.</param>
/// <param name="BehindCause">The one that it hides behind.</param>
public readonly record struct HiddenCause(int Cause, int BehindCause);
