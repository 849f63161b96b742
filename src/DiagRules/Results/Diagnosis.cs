using System.Collections.Immutable;

namespace DiagRules.Results;

/// <summary>
/// What a session believes and proposes at one moment: a plain value that can be shown, compared and serialised without the
/// engine. Immutable and thread-safe.
/// </summary>
public sealed record Diagnosis
{
    /// <summary>Id of the pack.</summary>
    public required string Pack { get; init; }

    /// <summary>Version of the pack.</summary>
    public required string Version { get; init; }

    /// <summary>Chassis code, or <see langword="null"/> when the pack makes no difference.</summary>
    public string? Chassis { get; init; }

    /// <summary>Id of the complaint, or <see langword="null"/>.</summary>
    public string? Complaint { get; init; }

    /// <summary>Every cause and precondition, best first, ties by id; those ruled out with 0.</summary>
    public required ImmutableArray<Hypothesis> Hypotheses { get; init; }

    /// <summary>
    /// Probability that it is something the pack does not list, 0..1; <see langword="null"/> in packs with absolute probabilities.
    /// </summary>
    public double? Unlisted { get; init; }

    /// <summary>
    /// Expected cost from here until the complaint is gone, repairs and handing over included, under the best plan found; minutes' worth.
    /// </summary>
    public double ExpectedCost { get; init; }

    /// <summary>Causes likely to be there beside the leading one, from 0.2 up.</summary>
    public ImmutableArray<AlsoPresent> AlsoPresent { get; init; } = [];

    /// <summary>Findings and causes that are known, by id.</summary>
    public ImmutableArray<KnownFinding> Findings { get; init; } = [];

    /// <summary>Readings that are known, derived ones too, by id.</summary>
    public ImmutableArray<KnownReading> Readings { get; init; } = [];

    /// <summary>What to do next, best first.</summary>
    public ImmutableArray<NextStep> Next { get; init; } = [];

    /// <summary>Steps that are not offered, and why.</summary>
    public ImmutableArray<WithheldStep> Withheld { get; init; } = [];

    /// <summary>Advice of the rules that hold, by rule.</summary>
    public ImmutableArray<Advice> Advice { get; init; } = [];

    /// <summary>What can hurt now or in one of the steps proposed, gravest first.</summary>
    public ImmutableArray<HazardNotice> Hazards { get; init; } = [];

    /// <summary>Checks and repairs that rules keep back.</summary>
    public ImmutableArray<Deferral> Deferred { get; init; } = [];

    /// <summary>Findings for which what is known does not agree.</summary>
    public ImmutableArray<Contradiction> Contradictions { get; init; } = [];

    /// <summary>Everything else worth saying: values set aside, observations left out, how far the plan looked.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
