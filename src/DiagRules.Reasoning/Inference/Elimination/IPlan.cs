namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>A way to answer every question of one shape. Immutable and thread-safe.</summary>
internal interface IPlan
{
    InferenceEstimate Estimate { get; }

    /// <summary>Whether it is within the limits.</summary>
    bool IsAffordable { get; }

    /// <summary>Cells of all its tables.</summary>
    int CellCount { get; }
}
