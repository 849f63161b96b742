using System.Collections.Immutable;
using DiagRules.Model.Problems;

namespace DiagRules.Model;

/// <summary>One <c>shows</c> entry: what one parent lets appear at one child. Immutable.</summary>
/// <param name="Child">Node of the child (a finding or an effect).</param>
/// <param name="ByGrade">
/// For each grade of the parent a distribution over the grades of the child; sums to 1. The parent's first grade puts
/// everything on the child's first.
/// </param>
/// <param name="Place">Where it is written.</param>
public sealed record ShownGrades(int Child, ImmutableArray<ImmutableArray<double>> ByGrade, SourcePlace Place);
