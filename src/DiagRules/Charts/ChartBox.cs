using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Charts;

/// <summary>One box of a chart: a step, and where it leads. Immutable.</summary>
public sealed record ChartBox
{
    /// <summary>Number of the box, from 1, in reading order.</summary>
    public required int Number { get; init; }

    /// <summary>What kind of step. A specialist has a box of its own only where nothing else is worth doing from the start.</summary>
    public required StepKind Kind { get; init; }

    /// <summary>Id of the check or repair; <c>specialist</c> for handing over.</summary>
    public required string Step { get; init; }

    /// <summary>Title of the step.</summary>
    public required string Title { get; init; }

    /// <summary>
    /// What the answers are about: title or question of a finding or cause; <see langword="null"/> where <see cref="Title"/> says it, where several are
    /// asked, and for repairs.
    /// </summary>
    public string? Question { get; init; }

    /// <summary>Whether the answer comes from the check in the box before: nothing more to do but to look at what was found.</summary>
    public bool IsSameCheck { get; init; }

    /// <summary>The least skill that can do it, access included.</summary>
    public Skill Skill { get; init; }

    /// <summary>Minutes it takes, access still to be opened included; 0 where <see cref="IsSameCheck"/>.</summary>
    public double Minutes { get; init; }

    /// <summary>Titles of the access states to open first, in order.</summary>
    public ImmutableArray<string> Opens { get; init; } = [];

    /// <summary>Readings to take for this answer.</summary>
    public ImmutableArray<ChartReading> Readings { get; init; } = [];

    /// <summary>What can hurt in this step and what comes to light with it, gravest first.</summary>
    public ImmutableArray<HazardNotice> Hazards { get; init; } = [];

    /// <summary>Advice of the rules that hold from here on.</summary>
    public ImmutableArray<string> Advice { get; init; } = [];

    /// <summary>Conditions on readings under which rules keep the step back; the chart cannot know the values, so they are for the reader to mind.</summary>
    public ImmutableArray<string> NotWhile { get; init; } = [];

    /// <summary>Of a repair the causes it puts right, likeliest first; of a specialist's box those that lead.</summary>
    public ImmutableArray<ChartSuspect> Suspects { get; init; } = [];

    /// <summary>Probability of coming here from the first box, by whatever ways lead here; 1 at the first.</summary>
    public required double Reached { get; init; }

    /// <summary>
    /// Where it leads: together they cover every answer, and their probabilities add up to 1. Where several findings are asked the first branch that fits
    /// counts. Empty for a specialist.
    /// </summary>
    public ImmutableArray<ChartBranch> Branches { get; init; } = [];
}

/// <summary>A reading to take. Immutable.</summary>
/// <param name="Reading">Id, as the limits of the answers name it.</param>
/// <param name="Title">What to measure.</param>
/// <param name="Unit">Unit the pack shows it in.</param>
public sealed record ChartReading(string Reading, string Title, string Unit);

/// <summary>A cause and how far it is believed at a box. Immutable.</summary>
/// <param name="Cause">Id.</param>
/// <param name="Title">Title.</param>
/// <param name="Confidence">Probability 0..1; the mean where several ways lead to the box.</param>
public sealed record ChartSuspect(string Cause, string Title, double Confidence);
