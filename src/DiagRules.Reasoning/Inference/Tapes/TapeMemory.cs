namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>The memory of one question. Pooled; used by one thread at a time; grows to the largest tape it has served.</summary>
internal sealed class TapeMemory(Network network)
{
    public TapeRequest Request { get; } = new(network.Count);

    /// <summary>What bears on each variable alone: priors, likelihoods, contributions of split nodes.</summary>
    public double[] Locals { get; private set; } = [];

    /// <summary>Each local is to be multiplied by 2^(-256 times this).</summary>
    public int[] LocalExponents { get; private set; } = [];

    /// <summary>Tables from the network, in the cells between the locals and the products.</summary>
    public double[] Tables { get; private set; } = [];

    /// <summary>Grade of each node that the tape takes as known.</summary>
    public int[] FixedGrades { get; } = new int[network.Count];

    /// <summary>All cells, lane beside lane.</summary>
    public double[] Cells { get; private set; } = [];

    /// <summary>Derivative of the answer by each cell.</summary>
    public double[] Derivatives { get; private set; } = [];

    /// <summary>The power of two each message was multiplied with.</summary>
    public double[] Scales { get; private set; } = [];

    public void FitLoading(Tape tape)
    {
        Locals = AtLeast(Locals, tape.Locals[^1]);
        LocalExponents = AtLeast(LocalExponents, tape.Locals[^1]);
        Tables = AtLeast(Tables, tape.One + 1);
    }

    public void FitRun(Tape tape, int lanes)
    {
        Cells = AtLeast(Cells, tape.CellCount * lanes);
        Derivatives = AtLeast(Derivatives, tape.CellCount * lanes);
        Scales = AtLeast(Scales, tape.Steps.Length * lanes);
    }

    private static T[] AtLeast<T>(T[] array, int length) => array.Length >= length ? array : new T[Math.Max(length, array.Length * 3 / 2)];
}
