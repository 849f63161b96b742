namespace DiagRules.Packs;

/// <summary>
/// How much a pack may ask of its reader; what exceeds a limit is refused with DR7001. The defaults suit packs from people one does
/// not know. Settable before loading; a loader takes its own copy, so later changes have no effect.
/// </summary>
public sealed record PackLimits
{
    /// <summary>Bytes of one file; 1 MiB by default.</summary>
    public int FileBytes { get; set; } = 1 << 20;

    /// <summary>Bytes of all files of a pack together; 16 MiB by default.</summary>
    public long PackBytes { get; set; } = 16L << 20;

    /// <summary>Entries after templates with <c>$set</c> are copied; 10 000 by default.</summary>
    public int Entries { get; set; } = 10_000;

    /// <summary>Members of one set; 64 by default.</summary>
    public int SetMembers { get; set; } = 64;

    /// <summary>How deep maps and lists may stand inside each other; 32 by default.</summary>
    public int Nesting { get; set; } = 32;

    /// <summary>Characters of one condition; 4 000 by default.</summary>
    public int ConditionLength { get; set; } = 4_000;

    /// <summary>How deep the parts of a condition may stand inside each other; 64 by default.</summary>
    public int ConditionDepth { get; set; } = 64;

    /// <summary>Grades of a finding or effect; 8 by default, and never more.</summary>
    public int Grades { get; set; } = 8;

    /// <summary>Parents of a <c>table</c>; 12 by default.</summary>
    public int TableParents { get; set; } = 12;

    /// <summary>Combinations of the parents' grades of a <c>table</c>; 4 096 by default.</summary>
    public int TableCombinations { get; set; } = 4_096;
}
