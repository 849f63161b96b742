namespace DiagRules.Reasoning.Testability;

/// <summary>Two causes that, both present, show like another one alone.</summary>
/// <param name="First">The one with the lower index.</param>
/// <param name="Second">The other one.</param>
/// <param name="LooksLike">The single causes they look like, in order; at least one.</param>
public sealed record Imitation(int First, int Second, IReadOnlyList<int> LooksLike);
