using System.Collections.Immutable;
using DiagRules.Model.Conditions;

namespace DiagRules.Model;

/// <summary>A forward-chaining rule. Immutable.</summary>
public sealed record Rule : Entry
{
    /// <summary>Must be certainly true.</summary>
    public required Condition When { get; init; }

    /// <summary>Findings it settles, each at one grade.</summary>
    public ImmutableArray<NodeGrades> Settles { get; init; } = [];

    /// <summary>Causes it rules out, by node.</summary>
    public ImmutableArray<int> RulesOut { get; init; } = [];

    /// <summary>Advice to show, or <see langword="null"/>.</summary>
    public string? Advise { get; init; }

    /// <summary>Hazards to show, by id.</summary>
    public ImmutableArray<string> Hazards { get; init; } = [];

    /// <summary>Checks and repairs not to be done yet, by id.</summary>
    public ImmutableArray<string> Defers { get; init; } = [];

    /// <summary>Why, for all consequences; <see langword="null"/> when not stated.</summary>
    public string? Reason { get; init; }
}
