namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>A way to answer every question of one shape. Immutable and thread-safe.</summary>
internal interface IPlan
{
    InferenceEstimate Estimate { get; }

    /// <summary>Whether it is within the limits.</summary>
    bool IsAffordable { get; }

    /// <summary>How many cells of tables, or multiplications, it describes.</summary>
    int Size { get; }
}
