using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Cases;

namespace DiagRules.Charts.Drawing;

/// <summary>How one came to a place of the chart: what was answered and done on the way. Immutable.</summary>
internal sealed record ChartPath
{
    /// <summary>All that a session would have on record here.</summary>
    public required ImmutableArray<Observation> Record { get; init; }

    /// <summary>Steps done on the way, in order.</summary>
    public ImmutableArray<WorkStep> Steps { get; init; } = [];

    /// <summary>The check just done, as long as there may be more to read off it.</summary>
    public Check? Current { get; init; }

    /// <summary>Hazards and advice told on the way, by id.</summary>
    public ImmutableHashSet<string> Told { get; init; } = [];

    /// <summary>The path after an answer of a check.</summary>
    public ChartPath After(Check check, Graded graded, int grade) => this with
    {
        Record = Record.Add(new Observation(graded.Id, new Seen(Model.Conditions.GradeSet.Of(grade)))),
        Steps = Current == check ? Steps : Steps.Add(check),
        Current = check,
    };

    /// <summary>The path after a check that decides nothing.</summary>
    public ChartPath After(Check check) => this with { Steps = Steps.Add(check), Current = null };

    /// <summary>The path after a repair in vain.</summary>
    public ChartPath After(Repair repair) => this with
    {
        Record = Record.Add(new Observation(repair.Id, new Tried(TriedResult.NoChange))),
        Steps = Steps.Add(repair),
        Current = null,
    };
}
