using System.Collections.Immutable;
using DiagRules.Model.Problems;

namespace DiagRules.Model;

/// <summary>A full table instead of contributions: <c>given</c> and <c>table</c>. Immutable.</summary>
/// <param name="Parents">Nodes of the parents, in the order of <c>given</c>.</param>
/// <param name="Rows">
/// One distribution over the child's grades for every combination of the parents' grades, the last parent's grade running fastest.
/// </param>
/// <param name="Place">Where it is written.</param>
public sealed record GradeTable(ImmutableArray<int> Parents, ImmutableArray<ImmutableArray<double>> Rows, SourcePlace Place);
