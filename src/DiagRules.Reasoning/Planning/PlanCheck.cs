namespace DiagRules.Reasoning.Planning;

/// <summary>Something that can be found out.</summary>
/// <remarks>
/// Beyond the next step the answers of different checks are taken as independent once the primary cause is known.
/// </remarks>
public sealed record PlanCheck
{
    /// <summary>What it costs without opening anything. Finite, 0 or more.</summary>
    public required double Cost { get; init; }

    /// <summary>Accesses (indices) that must be open together. None by default.</summary>
    public IReadOnlyList<int> Needs { get; init; } = [];

    /// <summary>The possible answers, at least one. Under each cause their probabilities add up to 1 (to within 1e-6; they are normalised).</summary>
    public required IReadOnlyList<PlanOutcome> Outcomes { get; init; }

    /// <summary>Whether it can still be done. <see cref="StepState.Offered"/> by default.</summary>
    public StepState State { get; init; }
}
