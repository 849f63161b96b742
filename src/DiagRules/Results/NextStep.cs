using System.Collections.Immutable;
using DiagRules.Model;

namespace DiagRules.Results;

/// <summary>Something to do next, with its price and its reason. Immutable.</summary>
public sealed record NextStep
{
    /// <summary>What kind of step.</summary>
    public required StepKind Kind { get; init; }

    /// <summary>Id of the check or repair; <c>specialist</c> for handing over.</summary>
    public required string Id { get; init; }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>The least skill that can do it, access included.</summary>
    public required Skill Skill { get; init; }

    /// <summary>Minutes it takes, access still to be opened included.</summary>
    public required double Minutes { get; init; }

    /// <summary>What it costs, access still to be opened included; minutes' worth.</summary>
    public required double Cost { get; init; }

    /// <summary>Expected cost from there on; minutes' worth. Cost and this together rank the steps.</summary>
    public required double ExpectedCostAfter { get; init; }

    /// <summary>Causes whose standing its answer moves most, by id.</summary>
    public ImmutableArray<string> TellsApart { get; init; } = [];

    /// <summary>What each answer would say.</summary>
    public ImmutableArray<AnswerOutlook> Answers { get; init; } = [];

    /// <summary>Why it is proposed, in one or two sentences.</summary>
    public required string Why { get; init; }

    /// <summary>Access states to open first, by id, in order.</summary>
    public ImmutableArray<string> Opens { get; init; } = [];

    /// <summary>Hazards of the step and of the access it opens, by id, gravest first.</summary>
    public ImmutableArray<string> Hazards { get; init; } = [];
}
