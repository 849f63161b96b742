using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>One product of a tape.</summary>
/// <param name="First">Where its multiplications begin in <see cref="Tape.Products"/>.</param>
/// <param name="End">Where they end.</param>
/// <param name="Cells">The value it makes.</param>
/// <param name="IsMessage">Whether it is brought near 1.</param>
/// <param name="IsLeftActive">Whether the left factor depends on anything posteriors are wanted of.</param>
/// <param name="IsRightActive">Whether the right factor does.</param>
internal readonly record struct TapeStep(int First, int End, CellRange Cells, bool IsMessage, bool IsLeftActive, bool IsRightActive);

/// <summary>The cells of one value, and the sums that fill its "at most" states.</summary>
/// <param name="Offset">Its first cell.</param>
/// <param name="Count">Number of cells.</param>
/// <param name="FirstSum">Where its sums begin in <see cref="Tape.Sums"/>.</param>
/// <param name="EndSums">Where they end.</param>
internal readonly record struct CellRange(int Offset, int Count, int FirstSum, int EndSums);

/// <summary>A table that comes from the network and the grades known for certain.</summary>
/// <param name="Origin">A contribution or a table.</param>
/// <param name="Cells">Where it goes.</param>
/// <param name="Node">The node it belongs to.</param>
/// <param name="Parent">Which of the node's parents contributes.</param>
/// <param name="IsFirst">Whether the background and the parents known for certain are in it.</param>
/// <param name="Strides">Cells from one grade of the parent, and of the node, to the next.</param>
/// <param name="Places">For a table: place in the node's own table of each cell.</param>
internal sealed record TapeTable(ValueOrigin Origin, CellRange Cells, int Node, int Parent, bool IsFirst, (int Parent, int Node) Strides, int[] Places);

/// <summary>
/// A straight-line program of sums and products that gives the probability of the evidence for every question of one shape. Run backward, it gives the
/// derivative by every prior, and so all posteriors. Immutable and thread-safe.
/// </summary>
internal sealed class Tape : IPlan
{
    public required InferenceEstimate Estimate { get; init; }

    /// <summary>Whether the tape is within the limits; if not, it has no steps.</summary>
    public required bool IsAffordable { get; init; }

    public int Size => Products.Length / 3;

    public int CellCount { get; init; }

    public TapeStep[] Steps { get; init; } = [];

    /// <summary>Multiplications as triples: the cell at the third place grows by the product of the cells at the first two.</summary>
    public int[] Products { get; init; } = [];

    /// <summary>Additions as triples: the cell at the first place is the sum of the cells at the other two.</summary>
    public int[] Sums { get; init; } = [];

    public TapeTable[] Tables { get; init; } = [];

    /// <summary>Cells whose product is the answer.</summary>
    public int[] Results { get; init; } = [];

    /// <summary>The cell that holds 1.</summary>
    public int One { get; init; }

    public VariableStates[] Variables { get; init; } = [];

    /// <summary>Variable of each node, or -1.</summary>
    public int[] VariableOf { get; init; } = [];

    /// <summary>First cell of what bears on each variable alone; one entry more than there are variables.</summary>
    public int[] Locals { get; init; } = [0];

    /// <summary>Roots that bear on nothing else in the question.</summary>
    public int[] OutsideRoots { get; init; } = [];

    public int[] FixedNodes { get; init; } = [];

    public SplitTerm[] Splits { get; init; } = [];

    public int[] SplitNodes { get; init; } = [];

    public UnaryLeaf[] Unaries { get; init; } = [];

    public int[] Constants { get; init; } = [];

    public int[] Alone { get; init; } = [];

    /// <summary>Whether a node is a variable with a state per grade, and not one that is only gathered up to the grade seen.</summary>
    public bool IsReadable(int node) => VariableOf[node] >= 0 && Variables[VariableOf[node]].IsByGrade;
}
