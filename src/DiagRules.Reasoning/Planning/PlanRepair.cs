namespace DiagRules.Reasoning.Planning;

/// <summary>Something that can be put right. The re-test after it is free.</summary>
public sealed record PlanRepair
{
    /// <summary>What it costs without opening anything. Finite, 0 or more.</summary>
    public required double Cost { get; init; }

    /// <summary>Accesses (indices) that must be open together. None by default.</summary>
    public IReadOnlyList<int> Needs { get; init; } = [];

    /// <summary>What it cures; a cause that is not named is not cured. Something not listed is never cured.</summary>
    public required IReadOnlyList<Cure> Cures { get; init; }

    /// <summary>Checks (indices) that must be done, or be pointless, before. None by default.</summary>
    public IReadOnlyList<int> After { get; init; } = [];

    /// <summary>Whether it can still be done. <see cref="StepState.Done"/>: tried in vain, which the probabilities already reflect.</summary>
    public StepState State { get; init; }
}
