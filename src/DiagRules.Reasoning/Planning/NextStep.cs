namespace DiagRules.Reasoning.Planning;

/// <summary>A step that can be done now and what the job is expected to cost with it first.</summary>
public sealed record NextStep
{
    /// <summary>What it is.</summary>
    public required StepKind Kind { get; init; }

    /// <summary>Index of the check or repair; 0 for the specialist.</summary>
    public required int Index { get; init; }

    /// <summary>What the step itself costs, with the access that is closed now opened for it.</summary>
    public required double Cost { get; init; }

    /// <summary>What is expected to be spent after it under the best plan found; 0 for the specialist.</summary>
    public required double CostAfter { get; init; }

    /// <summary><see cref="Cost"/> + <see cref="CostAfter"/>: the expected cost of the job with this step first.</summary>
    public double Total => Cost + CostAfter;

    /// <summary>How many steps ahead the search looked for this one, itself included.</summary>
    public required int Depth { get; init; }

    /// <summary>Whether <see cref="Total"/> is the least possible with this step first; else it is what the best plan found costs.</summary>
    public required bool IsExact { get; init; }

    /// <summary>Whether it neither tells possible causes apart, nor clears the way for a repair, nor cures anything.</summary>
    public required bool IsIdle { get; init; }
}
