namespace DiagRules.Reasoning.Inference;

/// <summary>What a question would cost.</summary>
/// <param name="TableCells">
/// Cells of all tables together; compare with <see cref="InferenceLimits.TableCells"/>. One forward and one backward pass visit each about six times.
/// </param>
/// <param name="WidestTable">Number of nodes that the widest table joins.</param>
/// <param name="IsLowerBound">Whether the search for a plan was given up as hopeless, so that the true numbers are larger still.</param>
public sealed record InferenceEstimate(double TableCells, int WidestTable, bool IsLowerBound);
