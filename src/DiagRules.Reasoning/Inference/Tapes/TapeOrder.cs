namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>Joins the tables of a draft step by step, always by the action that makes the smallest table.</summary>
/// <remarks>
/// Two actions there are: to gather all contributions to a node, after which its grade can be read; and to eliminate a variable, which joins all tables about
/// it and sums it out. Tables may be joined in any order as long as none that holds a node partly gathered meets one that reads the node's grade.
/// </remarks>
internal sealed class TapeOrder
{
    private readonly TapeDraft _draft;
    private readonly TapeCosts _costs;
    private readonly ulong[] _touched;
    private readonly double _ceiling;
    private int _left;

    private TapeOrder(TapeDraft draft, double ceiling)
    {
        _draft = draft;
        _ceiling = ceiling;
        _costs = new TapeCosts(draft);
        _touched = new ulong[draft.Words];
        _left = draft.Variables.Count;
        One = new TapeValue(ValueOrigin.One, [], draft.Words);
    }

    public TapeValue One { get; }

    /// <summary>Products in the order in which they are to be made.</summary>
    public List<TapeValue> Products { get; } = [];

    /// <summary>Values without axes, whose product is the answer.</summary>
    public List<TapeValue> Results { get; } = [];

    /// <summary>Multiplications, and how many variables the widest table joins.</summary>
    public double Work { get; private set; }

    public int Widest { get; private set; }

    /// <summary>Whether everything was joined; if not, it is either too dear or cannot be done in this way.</summary>
    public bool IsComplete { get; private set; }

    public static TapeOrder Find(TapeDraft draft, double ceiling)
    {
        var order = new TapeOrder(draft, ceiling);
        order.Run();
        return order;
    }

    private void Run()
    {
        while (_left > 0 && Work <= _ceiling)
        {
            if (_costs.Cheapest() is not { } next)
            {
                return;
            }

            Act(next);
        }

        IsComplete = _left == 0 && Work <= _ceiling;
    }

    private void Act(TapeVariable variable)
    {
        Array.Clear(_touched);
        foreach (var child in variable.Children)
        {
            _touched[child.Number >> 6] |= 1UL << (child.Number & 63);
        }

        if (variable.IsGathering)
        {
            Gather(variable);
        }
        else
        {
            Eliminate(variable);
        }

        _costs.Refresh(_touched);
    }

    private void Gather(TapeVariable variable)
    {
        variable.IsGathering = false;
        var parts = variable.Uses.Where(value => value.IsPartial(variable)).ToList();
        if (variable.Form == Gathering.Reach)
        {
            Join(parts, variable, isSelection: true);
            Remove(variable);
            return;
        }

        var whole = Join(parts, null, isSelection: false);
        whole.SetPartial(variable, false);
        if (variable.Uses.Count == 2 && variable.Children.Count == 0)
        {
            // Only its likelihoods are left.
            Eliminate(variable);
        }
    }

    private void Eliminate(TapeVariable variable)
    {
        Join([.. variable.Uses], variable, isSelection: false);
        Remove(variable);
    }

    private void Remove(TapeVariable variable)
    {
        variable.IsGone = true;
        _left--;
    }

    /// <summary>Multiplies values, the smallest first and then always the one that makes the smallest product.</summary>
    private TapeValue Join(List<TapeValue> parts, TapeVariable? dropped, bool isSelection)
    {
        var product = TakeSmallest(parts, One);
        if (parts.Count == 0 && dropped is not null)
        {
            parts.Add(One);
        }

        while (parts.Count > 0)
        {
            var next = TakeSmallest(parts, product);
            product = Multiply(product, next, parts.Count == 0 ? dropped : null, isSelection, isMessage: parts.Count == 0);
        }

        for (var w = 0; w < _touched.Length; w++)
        {
            _touched[w] |= product.All[w];
        }

        if (product.Axes.Length == 0)
        {
            Results.Add(product);
        }

        return product;
    }

    /// <summary>Takes the part out that makes the smallest product with a value; of equals the first.</summary>
    private TapeValue TakeSmallest(List<TapeValue> parts, TapeValue value)
    {
        var (best, least) = (0, double.PositiveInfinity);
        for (var i = 0; i < parts.Count; i++)
        {
            if (_costs.StatesOfUnion(value, parts[i]) is var states && states < least)
            {
                (best, least) = (i, states);
            }
        }

        var part = parts[best];
        parts.RemoveAt(best);
        return part;
    }

    private TapeValue Multiply(TapeValue first, TapeValue second, TapeVariable? dropped, bool isSelection, bool isMessage)
    {
        var (left, right) = first.States >= second.States ? (first, second) : (second, first);
        Unuse(left);
        Unuse(right);
        var axes = TapeValue.AxesOfProduct(left, right);
        var product = new TapeValue(ValueOrigin.Product, [.. axes.Where(axis => axis != dropped)], _draft.Words)
        {
            Left = left,
            Right = right,
            Dropped = dropped,
            IsSelection = isSelection,
            IsMessage = isMessage,
        };
        var work = 1.0;
        for (var i = 0; i < right.Axes.Length; i++)
        {
            right.Widened[i] = right.IsPartial(right.Axes[i]) && left.Has(right.Axes[i]);
        }

        foreach (var axis in axes)
        {
            var isShared = left.IsPartial(axis) && right.IsPartial(axis);
            work *= isShared ? axis.States * (axis.States + 1) / 2 : axis.States;
        }

        for (var w = 0; w < _draft.Words; w++)
        {
            product.Partial[w] = (left.Partial[w] | right.Partial[w]) & product.All[w];
        }

        Work += work;
        Widest = Math.Max(Widest, axes.Count);
        Products.Add(product);
        foreach (var axis in product.Axes)
        {
            axis.Uses.Add(product);
        }

        return product;
    }

    private static void Unuse(TapeValue value)
    {
        foreach (var axis in value.Axes)
        {
            axis.Uses.Remove(value);
        }
    }
}
