namespace DiagRules.Reasoning.Inference.Elimination;

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
