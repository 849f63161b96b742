namespace DiagRules.Reasoning.Inference;

/// <summary>What a question would cost.</summary>
/// <param name="TableCells">Cells of all tables together; compare with <see cref="InferenceLimits.TableCells"/>. May be astronomically large.</param>
/// <param name="Operations">Multiplications and additions of one forward and one backward pass, roughly.</param>
/// <param name="WidestTable">Number of nodes that the widest table joins.</param>
public sealed record InferenceEstimate(double TableCells, double Operations, int WidestTable);
