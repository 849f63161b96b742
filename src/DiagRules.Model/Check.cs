using System.Collections.Immutable;
using DiagRules.Model.Conditions;

namespace DiagRules.Model;

/// <summary>Something that can be found out. Immutable.</summary>
public sealed record Check : WorkStep
{
    /// <summary>Readings, findings and causes it gives, by id.</summary>
    public required ImmutableArray<string> Gives { get; init; }

    /// <summary>Not offered where this is certainly true; <see langword="null"/> for never.</summary>
    public Condition? SkipIf { get; init; }

    /// <summary>Findings and readings that may be otherwise afterwards, by id.</summary>
    public ImmutableArray<string> Alters { get; init; } = [];

    /// <summary>Whether it is the question of a finding rather than an entry of <c>checks</c>; it has the finding's id.</summary>
    public bool IsQuestion { get; init; }
}
