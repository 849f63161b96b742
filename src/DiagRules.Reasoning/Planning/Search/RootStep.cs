namespace DiagRules.Reasoning.Planning.Search;

/// <summary>A possible next step while its worth is being worked out.</summary>
internal sealed class RootStep
{
    internal required StepKind Kind { get; init; }

    /// <summary>Index among the compiled checks or repairs.</summary>
    internal required int Compiled { get; init; }

    /// <summary>Index in the situation; 0 for the specialist.</summary>
    internal required int Index { get; init; }

    /// <summary>What the step itself costs with access opened.</summary>
    internal required double Cost { get; init; }

    /// <summary>Whether it neither tells anything apart nor cures anything.</summary>
    internal required bool IsIdle { get; init; }

    /// <summary>Expected cost with this step first, under the best plan found so far.</summary>
    internal double Total { get; private set; } = double.PositiveInfinity;

    /// <summary>How many steps ahead the search looked for it.</summary>
    internal int Depth { get; private set; } = 1;

    internal bool IsExact { get; private set; }

    internal void Improve(double total, int depth)
    {
        Total = Math.Min(Total, total);
        Depth = Math.Max(Depth, depth);
    }

    internal void Settle(double total, int depth)
    {
        // The least cost is never above that of a plan in hand; rounding could make it look so.
        (Total, Depth, IsExact) = (Math.Min(Total, total), depth, true);
    }
}
