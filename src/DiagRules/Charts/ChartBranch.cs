using System.Collections.Immutable;

namespace DiagRules.Charts;

/// <summary>Where answers of a box lead: to another box, or to an end. Immutable.</summary>
/// <param name="Answers">The answers any of which leads there; empty where there is but one way on.</param>
/// <param name="Probability">How likely these answers are once one is at the box, 0..1.</param>
/// <param name="Next">Number of the next box, or <see langword="null"/> at an end.</param>
/// <param name="End">How it ends, or <see langword="null"/> where it goes on.</param>
public sealed record ChartBranch(ImmutableArray<ChartAnswer> Answers, double Probability, int? Next, ChartEnd? End)
{
    /// <summary>Whether it is the way on when no branch before it fits; then its answers are all found together. Only where several findings are asked.</summary>
    public bool IsOtherwise { get; init; }
}

/// <summary>One answer. Immutable.</summary>
/// <param name="Finding">Id of the finding or cause it is about; empty after a repair.</param>
/// <param name="Title">Its title; empty after a repair.</param>
/// <param name="Grade">The grade, as the pack writes it; after a repair <c>cured</c> or <c>no-change</c>.</param>
/// <param name="Limits">The condition on readings that means this grade, parameters written out as values; <see langword="null"/> where it is seen, not measured.</param>
public sealed record ChartAnswer(string Finding, string Title, string Grade, string? Limits)
{
    /// <summary>Whether it is the first, healthy grade.</summary>
    public bool IsHealthy { get; init; }
}

/// <summary>How a branch ends.</summary>
public enum ChartEnd
{
    /// <summary>The complaint is gone; what remains is to prove the repair.</summary>
    Cured,

    /// <summary>The job is given to a specialist: nothing else is worth its cost.</summary>
    Specialist,

    /// <summary>Too rare or too deep for the chart: ask again with all that was found, or give the job to a specialist.</summary>
    Beyond,
}
