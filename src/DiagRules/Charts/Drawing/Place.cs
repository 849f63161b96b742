using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Charts.Drawing;

/// <summary>A place of the tree behind a chart, before places that are alike are folded into one box.</summary>
/// <param name="path">How one came here.</param>
/// <param name="reached">Probability of coming here from the root.</param>
/// <param name="lead">Confidence of the leading cause here.</param>
internal sealed class Place(ChartPath path, double reached, double lead)
{
    public ChartPath Path { get; } = path;

    /// <summary>Probability of coming here from the root.</summary>
    public double Reached { get; } = reached;

    /// <summary>How many of all jobs could be ended here at once: what is drawn first.</summary>
    public double Promise { get; } = reached * lead;

    /// <summary>What is done here; <see langword="null"/> where the chart is cut.</summary>
    public PlacedStep? Step { get; set; }

    /// <summary>What comes of it.</summary>
    public List<Way> Ways { get; } = [];
}

/// <summary>What is done at a place.</summary>
internal sealed record PlacedStep
{
    public required StepKind Kind { get; init; }

    /// <summary>The check or repair; <see langword="null"/> for the specialist.</summary>
    public WorkStep? Work { get; init; }

    /// <summary>The finding or cause that a check is asked about.</summary>
    public Graded? Asked { get; init; }

    public bool IsSameCheck { get; init; }

    public Skill Skill { get; init; }

    public double Minutes { get; init; }

    /// <summary>Expected cost from here, the step included.</summary>
    public double ExpectedCost { get; init; }

    public ImmutableArray<string> Opens { get; init; } = [];

    public ImmutableArray<string> Hazards { get; init; } = [];

    /// <summary>Rules whose advice is new here.</summary>
    public ImmutableArray<Rule> Advice { get; init; } = [];

    /// <summary>Rules that keep the step back under values the chart does not know.</summary>
    public ImmutableArray<Rule> NotWhile { get; init; } = [];

    public ImmutableArray<ChartSuspect> Suspects { get; init; } = [];
}

/// <summary>One way on from a place.</summary>
/// <param name="Grade">Grade of the finding asked, or -1 where there is no question.</param>
/// <param name="Probability">Probability once one is at the place.</param>
/// <param name="Next">Where it leads; <see langword="null"/> when the complaint is gone.</param>
internal sealed record Way(int Grade, double Probability, Place? Next);
