namespace DiagRules.Reasoning.Inference;

/// <summary>How much an <see cref="InferenceEngine"/> may use. Immutable after construction; the defaults suit a desktop or a server.</summary>
public sealed record InferenceLimits
{
    /// <summary>So that places in tables are within the range of an <c>int</c>.</summary>
    private const long MostTableCells = 1L << 30;

    private readonly long _tableCells = 1L << 22;
    private readonly int _cachedPlans = 1024;
    private readonly long _cachedCells = 1L << 23;

    /// <summary>The defaults.</summary>
    public static InferenceLimits Default { get; } = new();

    /// <summary>Cells (8 bytes each) all tables of one question may have together.</summary>
    /// <value>4 194 304 by default: about 32 MiB and tens of milliseconds for one question. From 1 to 1 073 741 824.</value>
    public long TableCells
    {
        get => _tableCells;
        init => _tableCells = value is >= 1 and <= MostTableCells
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, $"'{nameof(TableCells)}' must be from 1 to {MostTableCells}.");
    }

    /// <summary>From this many cells on it is worth looking for a plan that serves fewer questions but this one better.</summary>
    internal long DearCells { get; init; } = 1 << 14;

    /// <summary>Which kinds of plan are used.</summary>
    internal PlanKinds Kinds { get; init; } = PlanKinds.Both;

    /// <summary>How many elimination plans are kept, the least recently used ones leaving first.</summary>
    /// <value>1024 by default. 1 or more.</value>
    public int CachedPlans
    {
        get => _cachedPlans;
        init => _cachedPlans = value >= 1 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, $"'{nameof(CachedPlans)}' must be 1 or more.");
    }

    /// <summary>How many table cells the kept plans may describe together; a plan needs 4 to 16 bytes a cell.</summary>
    /// <value>8 388 608 by default. 1 or more.</value>
    public long CachedCells
    {
        get => _cachedCells;
        init => _cachedCells = value >= 1 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, $"'{nameof(CachedCells)}' must be 1 or more.");
    }
}
