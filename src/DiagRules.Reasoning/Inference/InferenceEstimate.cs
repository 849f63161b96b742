namespace DiagRules.Reasoning.Inference;

/// <summary>What a question would cost.</summary>
/// <param name="TableCells">
/// Cells of all tables together, or where no tables are laid out the multiplications that take their place; compare with
/// <see cref="InferenceLimits.TableCells"/>. One pass forward and backward visits each up to six times.
/// </param>
/// <param name="WidestTable">Number of nodes that the widest table joins.</param>
/// <param name="IsLowerBound">Whether the search for a plan was given up as hopeless, so that the true numbers are larger still.</param>
public sealed record InferenceEstimate(double TableCells, int WidestTable, bool IsLowerBound);
