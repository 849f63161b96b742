namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>In which form a node's distribution enters a plan.</summary>
internal enum FactorForm : byte
{
    /// <summary>As one table, see <see cref="NodeModel.Dense"/>.</summary>
    Dense,

    /// <summary>As one link of <see cref="NodeModel.Chain"/>.</summary>
    Chain,

    /// <summary>As one link of <see cref="NodeModel.Reach"/>.</summary>
    Reach,
}

/// <summary>A step along a table: moving one grade of a variable or a fixed node moves this many cells.</summary>
internal readonly record struct Axis(int Id, int Stride);

/// <summary>A ready-made table that a plan reads, cut at the grades of its fixed nodes.</summary>
internal sealed record Factor(int Node, FactorForm Form, int Link, int Base, Axis[] Free, Axis[] Fixed)
{
    /// <summary>The table itself; a reach table depends on the grade that was seen.</summary>
    public double[] Table(NodeModel model, int grade) => Form switch
    {
        FactorForm.Dense => model.Dense(),
        FactorForm.Chain => model.Chain()[Link],
        _ => model.Reach(grade)[Link],
    };
}

/// <summary>One table multiplied into a bucket: a factor or the message of an earlier bucket.</summary>
/// <param name="Source">Number of the factor, or of the bucket whose message it is.</param>
/// <param name="IsMessage">Which of the two.</param>
/// <param name="Rows">Where in the source each row of the bucket begins; null where every row begins at 0.</param>
/// <param name="Stride">Cells from one grade of the bucket's variable to the next.</param>
internal readonly record struct BucketInput(int Source, bool IsMessage, int[]? Rows, int Stride);

/// <summary>Where one variable is eliminated: the table over it and its remaining neighbours.</summary>
internal sealed class Bucket
{
    /// <summary>The variable eliminated here; the fastest axis.</summary>
    public required int Variable { get; init; }

    /// <summary>Number of its grades.</summary>
    public required int Width { get; init; }

    /// <summary>Grade combinations of the neighbours.</summary>
    public required int RowCount { get; init; }

    /// <summary>Where its cells begin in the workspace.</summary>
    public required int CellOffset { get; init; }

    /// <summary>Where its message, one number a row, begins in the workspace.</summary>
    public required int RowOffset { get; init; }

    /// <summary>The neighbours with the number of rows one grade of each makes up.</summary>
    public required Axis[] Neighbours { get; init; }

    /// <summary>Whether the variable is maximised over.</summary>
    public required bool IsMaximised { get; init; }

    public required BucketInput[] Inputs { get; init; }

    /// <summary>The bucket that takes the message, or -1.</summary>
    public int Parent { get; init; } = -1;

    public int CellCount => RowCount * Width;
}

/// <summary>One contribution of a node that is known to be at most some grade.</summary>
/// <param name="Node">The node.</param>
/// <param name="Parent">Which of the node's parents, counted from 0.</param>
/// <param name="Variable">That parent's variable, or -1 if it is fixed.</param>
internal readonly record struct SplitTerm(int Node, int Parent, int Variable);

/// <summary>A variable that stands for a node.</summary>
internal readonly record struct NodeVariable(int Variable, int Node);

/// <summary>A pruned and ordered elimination for every question of one shape. Immutable and thread-safe.</summary>
internal sealed class Plan
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

    public int CellCount { get; init; }

    public int RowCount { get; init; }
}
