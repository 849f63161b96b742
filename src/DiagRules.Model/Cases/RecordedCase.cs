using System.Collections.Immutable;
using DiagRules.Model.Problems;

namespace DiagRules.Model.Cases;

/// <summary>A closed job, kept to prove a pack against. Immutable.</summary>
public sealed record RecordedCase
{
    /// <summary>Word for a cause the pack does not list, in <see cref="Confirmed"/>.</summary>
    public const string Unlisted = "unlisted";

    /// <summary>Id of the case.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is written.</summary>
    public SourcePlace Place { get; init; }

    /// <summary>Day it was recorded, ISO 8601.</summary>
    public required string Recorded { get; init; }

    /// <summary>Chassis code, or <see langword="null"/> for the pack's first.</summary>
    public string? Chassis { get; init; }

    /// <summary>Id of the complaint, or <see langword="null"/>.</summary>
    public string? Complaint { get; init; }

    /// <summary>The customer's own words, or <see langword="null"/>.</summary>
    public string? Said { get; init; }

    /// <summary>Observations in the order they became known.</summary>
    public required ImmutableArray<Observation> Observations { get; init; }

    /// <summary>What was seen when the machine was opened; on record, not used when the case is replayed.</summary>
    public ImmutableArray<Observation> SeenOnOpening { get; init; } = [];

    /// <summary>Ids of the causes or preconditions that were behind it, or <see cref="Unlisted"/>.</summary>
    public required ImmutableArray<string> Confirmed { get; init; }

    /// <summary>Consequences that were put right too.</summary>
    public ImmutableArray<NodeGrades> Damaged { get; init; } = [];

    /// <summary>Whether the cause is only probable: replayed and shown, not counted for acceptance.</summary>
    public bool IsProbable { get; init; }

    /// <summary>Id of the repair done, or <see langword="null"/>.</summary>
    public string? Repair { get; init; }

    /// <summary>Minutes it took, or <see langword="null"/>.</summary>
    public double? Minutes { get; init; }

    /// <summary>What the diagnosis must say.</summary>
    public Expectation Expect { get; init; } = new();

    /// <summary>Where the case was published, or <see langword="null"/>.</summary>
    public string? Source { get; init; }
}

/// <summary>What the diagnosis of a recorded case must say. Immutable.</summary>
public sealed record Expectation
{
    /// <summary>The best placed confirmed cause must rank at least here.</summary>
    public int Top { get; init; } = 3;

    /// <summary>Least confidence of the best placed confirmed cause, or <see langword="null"/>.</summary>
    public double? Confidence { get; init; }

    /// <summary>Hazards that must be shown, by id.</summary>
    public ImmutableArray<string> Hazards { get; init; } = [];

    /// <summary>A check that must be among the first three, by id, or <see langword="null"/>.</summary>
    public string? NextCheck { get; init; }

    /// <summary>Checks that must never be proposed, by id.</summary>
    public ImmutableArray<string> NeverCheck { get; init; } = [];
}
