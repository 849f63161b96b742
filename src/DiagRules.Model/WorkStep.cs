using System.Collections.Immutable;

namespace DiagRules.Model;

/// <summary>Work on the machine: what checks, access states and repairs share. Immutable.</summary>
public abstract record WorkStep : Entry
{
    /// <summary>Minutes of a practised hand, putting back included.</summary>
    public double Minutes { get; init; }

    /// <summary>What it costs beside the minutes.</summary>
    public Expense Cost { get; init; }

    /// <summary>The least skill that can do it.</summary>
    public Skill Skill { get; init; } = Skill.Workshop;

    /// <summary>Access states that must be open, by id.</summary>
    public ImmutableArray<string> Needs { get; init; } = [];

    /// <summary>Tools.</summary>
    public ImmutableArray<string> Tools { get; init; } = [];

    /// <summary>What can hurt, by id.</summary>
    public ImmutableArray<string> Hazards { get; init; } = [];

    /// <summary>How to do it, step by step.</summary>
    public ImmutableArray<string> Instructions { get; init; } = [];
}
