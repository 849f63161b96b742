using System.Collections.Immutable;

namespace DiagRules.Model;

/// <summary>
/// Something with ordered grades: a cause, precondition, effect or finding. The first grade is the healthy one; of two
/// influences acting at once the later grade is what is seen.
/// </summary>
public abstract record Graded : Entry
{
    /// <summary>Two to eight grades, healthy one first. Causes have <c>absent</c> and <c>present</c>.</summary>
    public required ImmutableArray<string> Grades { get; init; }

    /// <summary>Position among all graded entries of the pack (<see cref="Pack.Nodes"/>), from 0.</summary>
    public required int Node { get; init; }

    /// <summary>What it lets appear elsewhere.</summary>
    public ImmutableArray<ShownGrades> Shows { get; init; } = [];

    /// <summary>Position of a grade, or -1.</summary>
    public int GradeOf(string grade) => Grades.IndexOf(grade, StringComparer.Ordinal);
}
