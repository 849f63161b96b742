using System.Collections.Immutable;

namespace DiagRules.Model;

/// <summary>A graded state inside the machine that nobody observes directly, or a finding that somebody does.</summary>
public abstract record Consequence : Graded
{
    /// <summary>
    /// How often each grade is seen though no listed cause is behind it: a distribution over all grades, the first one getting
    /// what is left over.
    /// </summary>
    public ImmutableArray<double> Background { get; init; } = [];

    /// <summary>A full table that replaces contributions and background, or <see langword="null"/>.</summary>
    public GradeTable? Table { get; init; }

    /// <summary>Damage to put right as well: id of the repair by grade, <see langword="null"/> where there is none.</summary>
    public ImmutableArray<string?> RepairByGrade { get; init; } = [];
}
