namespace DiagRules.Reasoning.Planning;

/// <summary>A place in a policy tree: what to do there, and what comes of it.</summary>
public sealed record PolicyNode
{
    /// <summary>What to do.</summary>
    public required StepKind Kind { get; init; }

    /// <summary>Index of the check or repair; 0 for the specialist.</summary>
    public required int Index { get; init; }

    /// <summary>What the step costs here, with the access that is closed opened for it.</summary>
    public required double Cost { get; init; }

    /// <summary>The probability of coming here from the root; 1 at the root.</summary>
    public required double Reached { get; init; }

    /// <summary>Expected cost from here until the complaint is gone, as planned here.</summary>
    public required double ExpectedCost { get; init; }

    /// <summary>
    /// Where it goes on: per possible answer of a check, or after a repair in vain where that is possible. Empty after the specialist, after a
    /// repair that cannot fail, and where the tree is cut.
    /// </summary>
    public required IReadOnlyList<PolicyBranch> Branches { get; init; }

    /// <summary>Whether it would go on from here but for the limits of the tree.</summary>
    public required bool IsCut { get; init; }
}
