using System.Collections.Immutable;

namespace DiagRules.Model;

/// <summary>A state that must be reached before a step: a cover off, the supply isolated. Paid once. Immutable.</summary>
public sealed record Access : WorkStep
{
    /// <summary>Access states that opening this one closes, by id.</summary>
    public ImmutableArray<string> Excludes { get; init; } = [];
}
