using System.Collections.Immutable;

namespace DiagRules.Charts;

/// <summary>How a step of a chart is done: what stands in the pack about a check, repair or access. Immutable.</summary>
public sealed record ChartStep
{
    /// <summary>Id of the check, repair or access.</summary>
    public required string Id { get; init; }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>Numbers of the boxes where it is done or opened.</summary>
    public ImmutableArray<int> Boxes { get; init; } = [];

    /// <summary>Tools.</summary>
    public ImmutableArray<string> Tools { get; init; } = [];

    /// <summary>How to do it, in order.</summary>
    public ImmutableArray<string> Instructions { get; init; } = [];

    /// <summary>Hazards, by id, gravest first; they stand in full in <see cref="TroubleshootingChart.Hazards"/>.</summary>
    public ImmutableArray<string> Hazards { get; init; } = [];

    /// <summary>Parts of a repair.</summary>
    public ImmutableArray<string> Parts { get; init; } = [];

    /// <summary>Fasteners of a repair, spanner size and torque written out.</summary>
    public ImmutableArray<string> Fasteners { get; init; } = [];

    /// <summary>What proves a repair.</summary>
    public ImmutableArray<ChartProof> Proofs { get; init; } = [];
}

/// <summary>A check that proves a repair. Immutable.</summary>
/// <param name="Check">Title of the check.</param>
/// <param name="Times">How often, where the fault came and went.</param>
/// <param name="Expected">What must come out: findings with their first grade.</param>
public sealed record ChartProof(string Check, int Times, ImmutableArray<string> Expected);
