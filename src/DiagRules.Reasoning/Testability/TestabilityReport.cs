namespace DiagRules.Reasoning.Testability;

/// <summary>What a set of checks can find and tell apart when one cause is present at a time. Causes and checks are indices into the matrix.</summary>
public sealed record TestabilityReport
{
    private readonly double[] _isolation;
    private readonly double[] _isolationByRate;

    internal TestabilityReport(double[] isolation, double[] isolationByRate) => (_isolation, _isolationByRate) = (isolation, isolationByRate);

    /// <summary>Causes that no check shows, in order.</summary>
    public required IReadOnlyList<int> Undetected { get; init; }

    /// <summary>Detected causes that the same checks show and that cannot be told apart, in order of their first members.</summary>
    public required IReadOnlyList<IReadOnlyList<int>> AmbiguityGroups { get; init; }

    /// <summary>Fault detection rate: the share of the causes that some check shows; 0..1.</summary>
    public required double DetectionRate { get; init; }

    /// <summary>The same with every cause weighted by its rate.</summary>
    public required double DetectionRateByRate { get; init; }

    /// <summary>The mean size of the ambiguity groups; 0 when there is none.</summary>
    public required double MeanGroupSize { get; init; }

    /// <summary>The size of the group that a detected cause falls into, averaged over the causes; 0 when none is detected.</summary>
    public required double ExpectedGroupSize { get; init; }

    /// <summary>The same with every cause weighted by its rate; 0 when no detected cause has one.</summary>
    public required double ExpectedGroupSizeByRate { get; init; }

    /// <summary>Checks each of which could be left out by itself without finding or telling apart less.</summary>
    public required IReadOnlyList<int> RedundantChecks { get; init; }

    /// <summary>
    /// Sets of checks that find and tell apart as much as all of them, and no longer do when any one is left out. Smallest first, then by their members.
    /// </summary>
    public required IReadOnlyList<IReadOnlyList<int>> MinimalCheckSets { get; init; }

    /// <summary>Whether <see cref="MinimalCheckSets"/> are all there are; when false there were more than allowed, and some are missing.</summary>
    public required bool HasAllMinimalCheckSets { get; init; }

    /// <summary>Pairs of detected causes that together look like a third one alone.</summary>
    public required IReadOnlyList<Imitation> Imitations { get; init; }

    /// <summary>Detected causes that nothing gives away beside another one.</summary>
    public required IReadOnlyList<HiddenCause> HiddenCauses { get; init; }

    /// <summary>Fault isolation rate: the share of the detected causes that fall into a group of at most this size; 0 when none is detected.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="groupSize"/> is below 1.</exception>
    public double IsolationRate(int groupSize) => At(_isolation, groupSize);

    /// <summary>The same with every cause weighted by its rate.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="groupSize"/> is below 1.</exception>
    public double IsolationRateByRate(int groupSize) => At(_isolationByRate, groupSize);

    private static double At(double[] upTo, int groupSize)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(groupSize, 1);
        return upTo.Length == 0 ? 0 : upTo[Math.Min(groupSize, upTo.Length) - 1];
    }
}
