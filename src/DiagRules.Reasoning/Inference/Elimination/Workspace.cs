namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>
/// The memory of one question: tables, messages and likelihoods. Pooled; used by one thread at a time; grows to the largest plan it has served.
/// </summary>
internal sealed class Workspace(Network network)
{
    public PlanRequest Request { get; } = new(network.Count);

    /// <summary>Tables of all buckets; after the backward pass, their joint posteriors.</summary>
    public double[] Cells { get; private set; } = [];

    /// <summary>Messages of all buckets, towards the parent.</summary>
    public double[] Messages { get; private set; } = [];

    /// <summary>Posteriors over the rows of each bucket, set by the backward pass.</summary>
    public double[] Separators { get; private set; } = [];

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

    /// <summary>Natural logarithm of what the last question's forward pass gave.</summary>
    public double BaseLog { get; set; }

    private double[] KeptLocals { get; set; } = [];

    public void Fit(Plan plan)
    {
        Cells = AtLeast(Cells, plan.CellCount);
        Messages = AtLeast(Messages, plan.RowCount);
        Separators = AtLeast(Separators, plan.RowCount);
        Locals = AtLeast(Locals, plan.LocalOffsets[^1]);
        LocalExponents = AtLeast(LocalExponents, plan.LocalOffsets[^1]);
        Tables = AtLeast(Tables, plan.Factors.Length);
        Bases = AtLeast(Bases, plan.Factors.Length);
    }

    /// <summary>Remembers what bears on each variable, to vary it.</summary>
    public void KeepLocals(Plan plan)
    {
        KeptLocals = AtLeast(KeptLocals, plan.LocalOffsets[^1]);
        Locals.AsSpan(0, plan.LocalOffsets[^1]).CopyTo(KeptLocals);
    }

    /// <summary>Undoes all variations since <see cref="KeepLocals"/>.</summary>
    public void RestoreLocals(Plan plan) => KeptLocals.AsSpan(0, plan.LocalOffsets[^1]).CopyTo(Locals);

    /// <summary>Leaves a variable one grade.</summary>
    public void Restrict(Plan plan, int variable, int grade)
    {
        var local = Locals.AsSpan(plan.LocalOffsets[variable]..plan.LocalOffsets[variable + 1]);
        var kept = local[grade];
        local.Clear();
        local[grade] = kept;
    }

    /// <summary>Multiplies a factor into a variable.</summary>
    public void MultiplyLocal(Plan plan, int variable, ReadOnlySpan<double> values, int stride)
    {
        var local = Locals.AsSpan(plan.LocalOffsets[variable]..plan.LocalOffsets[variable + 1]);
        for (var grade = 0; grade < local.Length; grade++)
        {
            local[grade] *= values[grade * stride];
        }
    }

    private static T[] AtLeast<T>(T[] array, int length) => array.Length >= length ? array : new T[Math.Max(length, array.Length * 3 / 2)];
}
