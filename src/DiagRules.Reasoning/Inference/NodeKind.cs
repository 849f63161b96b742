namespace DiagRules.Reasoning.Inference;

/// <summary>How a node of a <see cref="Network"/> gets its grade.</summary>
public enum NodeKind
{
    /// <summary>It has no parents, only a prior.</summary>
    Root,

    /// <summary>It takes the latest grade that any parent's contribution or the background produces.</summary>
    Graded,

    /// <summary>A table gives its distribution for every combination of its parents' grades.</summary>
    Table,
}
