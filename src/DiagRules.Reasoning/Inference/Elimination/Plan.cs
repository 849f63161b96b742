namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>One contribution of a node that is known to be at most some grade.</summary>
/// <param name="Node">The node.</param>
/// <param name="Parent">Which of the node's parents, counted from 0.</param>
/// <param name="Variable">That parent's variable, or -1 if it is fixed.</param>
internal readonly record struct SplitTerm(int Node, int Parent, int Variable);

/// <summary>A variable that stands for a node.</summary>
internal readonly record struct NodeVariable(int Variable, int Node);

/// <summary>A pruned and ordered elimination for every question of one shape. Immutable and thread-safe.</summary>
internal sealed class Plan : IPlan
{
    public required InferenceEstimate Estimate { get; init; }

    /// <summary>Whether the plan is within the limits; if not, it has no buckets.</summary>
    public required bool IsAffordable { get; init; }

    public Bucket[] Buckets { get; init; } = [];

    /// <summary>How each bucket's message enters its parent; meaningless for a bucket without one.</summary>
    public BucketInput[] Links { get; init; } = [];

    /// <summary>All factors. Those over two variables or more are inputs of buckets.</summary>
    public Factor[] Factors { get; init; } = [];

    /// <summary>Factors that bear on one variable only.</summary>
    public Factor[] Unaries { get; init; } = [];

    /// <summary>Factors all of whose nodes are fixed.</summary>
    public Factor[] Constants { get; init; } = [];

    /// <summary>Where the grades of each variable begin; one entry more than there are variables.</summary>
    public int[] LocalOffsets { get; init; } = [0];

    /// <summary>Bucket that eliminates each variable.</summary>
    public int[] BucketOf { get; init; } = [];

    /// <summary>Variable of each node, or -1.</summary>
    public int[] VariableOf { get; init; } = [];

    public NodeVariable[] Roots { get; init; } = [];

    /// <summary>Roots that bear on nothing else in the question.</summary>
    public int[] OutsideRoots { get; init; } = [];

    public NodeVariable[] Softs { get; init; } = [];

    public int[] FixedNodes { get; init; } = [];

    public SplitTerm[] Splits { get; init; } = [];

    /// <summary>Nodes that are split, each once.</summary>
    public int[] SplitNodes { get; init; } = [];

    public int Size => CellCount;

    public int CellCount { get; init; }

    public int RowCount { get; init; }
}
