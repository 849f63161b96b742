using DiagRules.Model;
using DiagRules.Model.Conditions;

namespace DiagRules.Rules;

/// <summary>One condition with one conclusion: a <c>read</c>, a <c>must</c>, or one consequence of a rule.</summary>
internal sealed class RuleLine
{
    public required LineKind Kind { get; init; }

    /// <summary>Id of the rule, or of the finding or precondition the line belongs to.</summary>
    public required string Source { get; init; }

    public required Condition When { get; init; }

    /// <summary>Which observations count as known.</summary>
    public required World World { get; init; }

    /// <summary>Node it settles, or -1 for advice, hazards and deferrals.</summary>
    public int Node { get; init; } = -1;

    /// <summary>Grade it settles.</summary>
    public GradeSet Grades { get; init; }

    /// <summary>The rule behind it, or <see langword="null"/>.</summary>
    public Rule? Rule { get; init; }

    /// <summary>For a read that takes doubtful readings at their word: the line that does not. Both never speak at once.</summary>
    public RuleLine? StrictTwin { get; init; }

    public List<Branch> Branches { get; } = [];
}

/// <summary>What a line concludes.</summary>
internal enum LineKind
{
    Read,
    Must,
    Settle,
    RuleOut,
    Advice,
    Hazards,
    Defer,
}

/// <summary>How a doubtful observation is looked at.</summary>
internal enum World
{
    /// <summary>Below the threshold of trust it is unknown: what settles, rules out and decides preconditions.</summary>
    Strict,

    /// <summary>It is taken at its word: advice, hazards and deferrals, the safe side.</summary>
    Lenient,
}
