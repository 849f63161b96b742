namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>The memory of one question: tables, messages and likelihoods. Pooled; used by one thread at a time; grows to the largest plan it has served.</summary>
internal sealed class Workspace(Network network)
{
    public PlanRequest Request { get; } = new(network.Count);

    /// <summary>Tables of all buckets; after the backward pass, their joint posteriors.</summary>
    public double[] Cells { get; private set; } = [];

    /// <summary>Messages of all buckets, towards the parent.</summary>
    public double[] Messages { get; private set; } = [];

    /// <summary>Posteriors over the rows of each bucket, set by the backward pass.</summary>
    public double[] Separators { get; private set; } = [];

    /// <summary>Scratch for one message.</summary>
    public double[] Rows { get; private set; } = [];

    /// <summary>What bears on each variable alone: priors, likelihoods, contributions of split nodes.</summary>
    public double[] Locals { get; private set; } = [];

    /// <summary>Each local is to be multiplied by 2^(-256 times this).</summary>
    public int[] LocalExponents { get; private set; } = [];

    /// <summary>Table of each factor for this question.</summary>
    public double[][] Tables { get; private set; } = [];

    /// <summary>Where each factor's table begins, given the grades of its fixed nodes.</summary>
    public int[] Bases { get; private set; } = [];

    /// <summary>Grade of each node that the plan takes as fixed.</summary>
    public int[] FixedGrades { get; } = new int[network.Count];

    /// <summary>Tables under one more condition, see <see cref="Conditioning"/>.</summary>
    public double[] Conditioned { get; private set; } = [];

    /// <summary>Whether a bucket's conditioned table differs from its plain one.</summary>
    public bool[] IsConditioned { get; private set; } = [];

    /// <summary>Buckets still to be visited, each with the bucket it was reached from.</summary>
    public Stack<(int Bucket, int From)> Open { get; } = new();

    public void Fit(Plan plan)
    {
        Cells = AtLeast(Cells, plan.CellCount);
        Messages = AtLeast(Messages, plan.RowCount);
        Separators = AtLeast(Separators, plan.RowCount);
        Rows = AtLeast(Rows, plan.MaxRows);
        Locals = AtLeast(Locals, plan.LocalOffsets[^1]);
        LocalExponents = AtLeast(LocalExponents, plan.LocalOffsets[^1]);
        Tables = AtLeast(Tables, plan.Factors.Length);
        Bases = AtLeast(Bases, plan.Factors.Length);
    }

    public void FitConditioning(Plan plan)
    {
        Conditioned = AtLeast(Conditioned, plan.CellCount);
        IsConditioned = AtLeast(IsConditioned, plan.Buckets.Length);
    }

    private static T[] AtLeast<T>(T[] array, int length) => array.Length >= length ? array : new T[Math.Max(length, array.Length * 3 / 2)];
}
