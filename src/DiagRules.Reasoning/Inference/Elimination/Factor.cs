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
