using System.Collections.Immutable;
using DiagRules.Model.Conditions;

namespace DiagRules.Model;

/// <summary>How a job begins: the customer's complaint. Immutable.</summary>
public sealed record Complaint : Entry
{
    /// <summary>What the complaint tells, as the owner's observations.</summary>
    public ImmutableArray<NodeGrades> Means { get; init; } = [];

    /// <summary>
    /// Shares that replace the causes' own, by node of the cause; <see langword="null"/> when the causes keep theirs. A cause that is
    /// not listed has none.
    /// </summary>
    public ImmutableDictionary<int, double>? Shares { get; init; }

    /// <summary>Share of what no listed cause explains, or <see langword="null"/> for the pack's.</summary>
    public double? Unlisted { get; init; }
}

/// <summary>A graded entry and grades of it.</summary>
/// <param name="Node">Node of the entry.</param>
/// <param name="Grades">The grades.</param>
public readonly record struct NodeGrades(int Node, GradeSet Grades);
