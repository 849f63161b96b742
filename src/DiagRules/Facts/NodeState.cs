using System.Collections.Immutable;
using DiagRules.Model.Conditions;

namespace DiagRules.Facts;

/// <summary>Everything that speaks about one finding or cause, and what it amounts to.</summary>
/// <param name="Node">Node.</param>
/// <param name="Sides">What speaks, each with its own grades.</param>
internal sealed record NodeState(int Node, ImmutableArray<NodeObservation> Sides)
{
    /// <summary>What all sides agree on; empty for a contradiction.</summary>
    public GradeSet Grades { get; } = Sides.Aggregate(new GradeSet(byte.MaxValue), (agreed, side) => agreed & side.Grades);

    /// <summary>Whether the sides do not agree.</summary>
    public bool IsContradictory => Grades.IsEmpty;

    /// <summary>How far the agreed grades are believed: as far as the best single side that says just that, else the least of all.</summary>
    public double Trust
    {
        get
        {
            var direct = Sides.Where(side => side.Grades == Grades).Select(side => side.Trust).DefaultIfEmpty(-1).Max();
            return direct >= 0 ? direct : Sides.Min(side => side.Trust);
        }
    }
}
