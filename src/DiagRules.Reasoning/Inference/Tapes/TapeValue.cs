namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>Where a value of a tape comes from.</summary>
internal enum ValueOrigin : byte
{
    /// <summary>The number 1.</summary>
    One,

    /// <summary>What bears on one variable alone.</summary>
    Local,

    /// <summary>One parent's contribution to a node.</summary>
    Contribution,

    /// <summary>A node's own table.</summary>
    Table,

    /// <summary>The product of two earlier values.</summary>
    Product,
}

/// <summary>A table while a tape is drawn up: its axes, and how it comes about.</summary>
/// <remarks>Each value but "one" is used exactly once.</remarks>
internal sealed class TapeValue(ValueOrigin origin, TapeVariable[] axes, int words)
{
    private bool? _isActive;

    public ValueOrigin Origin { get; } = origin;

    public TapeVariable[] Axes { get; } = axes;

    /// <summary>The axes as bits.</summary>
    public ulong[] All { get; } = BitsOf(axes, words);

    /// <summary>Axes that hold the latest of only some contributions.</summary>
    public ulong[] Partial { get; } = new ulong[words];

    /// <summary>The node it belongs to, for a contribution or table.</summary>
    public int Node { get; init; } = -1;

    /// <summary>Which of the node's parents contributes.</summary>
    public int Parent { get; init; }

    /// <summary>Whether the background and the parents known for certain are in this contribution.</summary>
    public bool IsFirst { get; init; }

    public TapeValue? Left { get; init; }

    public TapeValue? Right { get; init; }

    /// <summary>The axis summed out, or of which one state is kept.</summary>
    public TapeVariable? Dropped { get; init; }

    /// <summary>Whether only the last state of the dropped axis counts.</summary>
    public bool IsSelection { get; init; }

    /// <summary>Whether this ends an action, so that it is brought near 1.</summary>
    public bool IsMessage { get; init; }

    /// <summary>Axes that also hold "at most" each state but the first, for the product this goes into.</summary>
    public bool[] Widened { get; } = new bool[axes.Length];

    public int[] Strides { get; } = new int[axes.Length];

    public int Offset { get; set; }

    public int Cells { get; set; }

    /// <summary>Number of combinations of states.</summary>
    public double States { get; } = StatesOf(axes);

    /// <summary>Whether it depends on a root, whose posterior may be read. A table from the network does not, nor does what was seen of a child.</summary>
    public bool IsActive => Origin switch
    {
        ValueOrigin.Product => _isActive ??= Left!.IsActive || Right!.IsActive,
        ValueOrigin.Local => Axes[0].Form == Gathering.None && Axes[0].Parents.Count == 0,
        _ => false,
    };

    public bool Has(TapeVariable variable) => (All[variable.Number >> 6] >> (variable.Number & 63) & 1) == 1;

    public bool IsPartial(TapeVariable variable) => (Partial[variable.Number >> 6] >> (variable.Number & 63) & 1) == 1;

    public void SetPartial(TapeVariable variable, bool isPartial)
    {
        ref var word = ref Partial[variable.Number >> 6];
        var bit = 1UL << (variable.Number & 63);
        word = isPartial ? word | bit : word & ~bit;
    }

    public int IndexOf(TapeVariable variable) => Array.IndexOf(Axes, variable);

    /// <summary>Axes in both whose contributions meet, axes in both, axes of one. The longest stretch without a sum comes last and so runs fastest.</summary>
    public static List<TapeVariable> AxesOfProduct(TapeValue left, TapeValue right)
    {
        var axes = new List<TapeVariable>(left.Axes.Length + right.Axes.Length);
        AddAxes(axes, left, right, isShared: true, isPartial: true);
        AddAxes(axes, left, right, isShared: true, isPartial: false);
        AddAxes(axes, right, left, isShared: false, isPartial: null);
        AddAxes(axes, left, right, isShared: false, isPartial: null);
        return axes;
    }

    private static void AddAxes(List<TapeVariable> axes, TapeValue from, TapeValue other, bool isShared, bool? isPartial)
    {
        foreach (var axis in from.Axes)
        {
            if (other.Has(axis) == isShared && (isPartial is null || from.IsPartial(axis) == isPartial))
            {
                axes.Add(axis);
            }
        }
    }

    private static double StatesOf(TapeVariable[] axes)
    {
        var states = 1.0;
        foreach (var axis in axes)
        {
            states *= axis.States;
        }

        return states;
    }

    private static ulong[] BitsOf(TapeVariable[] axes, int words)
    {
        var bits = new ulong[words];
        foreach (var axis in axes)
        {
            bits[axis.Number >> 6] |= 1UL << (axis.Number & 63);
        }

        return bits;
    }
}
