using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>Draws a tape up: joins the tables of a draft in a good order and writes every sum and product down with the cells it works on.</summary>
internal sealed class TapeBuilder
{
    /// <summary>So that places are well within the range of an <c>int</c>.</summary>
    private const double MostProducts = 1 << 26;

    private readonly TapeDraft _draft;
    private readonly TapeOrder _order;
    private readonly List<int> _sums = [];
    private readonly int[] _products;
    private int _cells;
    private int _written;

    private TapeBuilder(TapeDraft draft, TapeOrder order)
    {
        _draft = draft;
        _order = order;
        _products = new int[3 * (int)order.Work];
    }

    public static Tape Build(Network network, TapeRequest request, long allowedCells)
    {
        var draft = new TapeDraft(network, request);
        var order = TapeOrder.Find(draft, Math.Min(allowedCells, MostProducts));
        var estimate = new InferenceEstimate(order.Work, order.Widest, IsLowerBound: !order.IsComplete);
        return order.IsComplete
            ? new TapeBuilder(draft, order).ToTape(network, request, estimate)
            : new Tape { Estimate = estimate, IsAffordable = false };
    }

    private Tape ToTape(Network network, TapeRequest request, InferenceEstimate estimate)
    {
        var locals = PlaceLocals();
        TapeTable[] tables = [.. _draft.Values.Where(value => value.Origin != ValueOrigin.Local).Select(value => TableOf(value, network, request))];
        Place(_order.One);
        TapeStep[] steps = [.. _order.Products.Select(StepOf)];
        return new Tape
        {
            Estimate = estimate,
            IsAffordable = true,
            CellCount = _cells,
            Steps = steps,
            Products = _products.AsSpan(0, _written).ToArray(),
            Sums = [.. _sums],
            Tables = tables,
            Results = [.. _order.Results.Select(value => value.Offset)],
            One = _order.One.Offset,
            Variables = [.. _draft.Variables.Select(variable => variable.Shape)],
            VariableOf = Array.ConvertAll(_draft.VariableOf, variable => variable?.Number ?? -1),
            Locals = locals,
            OutsideRoots = [.. Nodes(network, node => !_draft.Relevant[node] && network.Nodes[node].Kind == NodeKind.Root)],
            FixedNodes = [.. Nodes(network, node => request.RoleOf(node) == NodeRole.Fixed)],
            Splits = [.. _draft.Splits],
            SplitNodes = [.. _draft.SplitNodes],
            Unaries = [.. _draft.Unaries],
            Constants = [.. _draft.Constants],
            Alone = [.. _draft.Alone.Select(variable => variable.Number)],
        };
    }

    private static IEnumerable<int> Nodes(Network network, Func<int, bool> isWanted) => Enumerable.Range(0, network.Count).Where(isWanted);

    private int[] PlaceLocals()
    {
        var locals = new int[_draft.Variables.Count + 1];
        foreach (var value in _draft.Values.Where(value => value.Origin == ValueOrigin.Local))
        {
            Place(value);
            locals[value.Axes[0].Number + 1] = value.Cells;
        }

        for (var v = 0; v < _draft.Variables.Count; v++)
        {
            locals[v + 1] += locals[v];
        }

        return locals;
    }

    /// <summary>Gives a value its cells, the last axis fastest.</summary>
    private CellRange Place(TapeValue value)
    {
        var count = 1;
        for (var i = value.Axes.Length - 1; i >= 0; i--)
        {
            value.Strides[i] = count;
            count *= SlotsOf(value, i);
        }

        value.Offset = _cells;
        value.Cells = count;
        _cells += count;
        var first = _sums.Count;
        for (var i = 0; i < value.Axes.Length; i++)
        {
            if (value.Widened[i])
            {
                AddSums(value, i);
            }
        }

        return new CellRange(value.Offset, count, first, _sums.Count);
    }

    private static int SlotsOf(TapeValue value, int axis) => value.Widened[axis] ? (2 * value.Axes[axis].States) - 1 : value.Axes[axis].States;

    /// <summary>"At most the first" is the first; "at most o" goes behind the plain states.</summary>
    private static int SlotOfAtMost(int state, int states) => state == 0 ? 0 : states - 1 + state;

    private void AddSums(TapeValue value, int axis)
    {
        var starts = new List<int> { value.Offset };
        for (var i = 0; i < value.Axes.Length; i++)
        {
            // Axes before this one are widened already, those behind it will be.
            var slots = i < axis ? SlotsOf(value, i) : value.Axes[i].States;
            starts = i == axis ? starts : [.. starts.SelectMany(start => Enumerable.Range(0, slots).Select(slot => start + (slot * value.Strides[i])))];
        }

        var states = value.Axes[axis].States;
        var stride = value.Strides[axis];
        foreach (var start in starts)
        {
            for (var o = 1; o < states; o++)
            {
                _sums.AddRange([
                    start + (SlotOfAtMost(o, states) * stride), start + (SlotOfAtMost(o - 1, states) * stride), start + (o * stride)]);
            }
        }
    }

    private TapeTable TableOf(TapeValue value, Network network, TapeRequest request)
    {
        var cells = Place(value);
        return value.Origin == ValueOrigin.Contribution
            ? new TapeTable(value.Origin, cells, value.Node, value.Parent, value.IsFirst, (value.Strides[0], value.Strides[1]), [])
            : new TapeTable(value.Origin, cells, value.Node, 0, false, default, PlacesOf(value, network.Nodes[value.Node], request));
    }

    /// <summary>Where in a node's own table each cell comes from, apart from the grades known for certain.</summary>
    private static int[] PlacesOf(TapeValue value, NodeModel model, TapeRequest request)
    {
        var places = new int[value.Cells];
        var stride = 1;
        for (var k = model.Parents.Length; k >= 0; k--)
        {
            // The parents from the last to the first, then the node itself.
            var isNode = k == 0;
            var node = isNode ? value.Node : model.Parents[k - 1].Node;
            var grades = isNode ? model.Grades : model.Parents[k - 1].Grades;
            var axis = Array.FindIndex(value.Axes, variable => variable.Node == node);
            if (axis >= 0 && request.RoleOf(node) is NodeRole.Free or NodeRole.Open)
            {
                for (var cell = 0; cell < places.Length; cell++)
                {
                    places[cell] += cell / value.Strides[axis] % grades * stride;
                }
            }

            stride *= grades;
        }

        return places;
    }

    private TapeStep StepOf(TapeValue product)
    {
        var (left, right) = (product.Left!, product.Right!);
        var cells = Place(product);
        var first = _written;
        _products[_written++] = left.Offset;
        _products[_written++] = right.Offset;
        _products[_written++] = product.Offset;
        if (product.Dropped is { } dropped)
        {
            Repeat(first, product, dropped, -1);
        }

        for (var i = 0; i < product.Axes.Length; i++)
        {
            Repeat(first, product, product.Axes[i], i);
        }

        return new TapeStep(first, _written, cells, product.IsMessage, left.IsActive, right.IsActive);
    }

    /// <summary>Repeats the multiplications from <paramref name="first"/> on for every combination of states along one more axis.</summary>
    private void Repeat(int first, TapeValue product, TapeVariable axis, int index)
    {
        int left = StrideOf(product.Left!, axis), right = StrideOf(product.Right!, axis), result = index < 0 ? 0 : product.Strides[index];
        var isMeeting = product.Left!.IsPartial(axis) && product.Right!.IsPartial(axis);
        var from = index < 0 && product.IsSelection ? axis.States - 1 : 0;
        Span<int> steps = stackalloc int[3 * (axis.States * (axis.States + 1) / 2)];
        var count = 0;
        for (var o = from; o < axis.States; o++)
        {
            for (var before = 0; isMeeting && before < o; before++)
            {
                (steps[count], steps[count + 1], steps[count + 2]) = (before * left, o * right, o * result);
                count += 3;
            }
        }

        for (var o = from; o < axis.States; o++)
        {
            (steps[count], steps[count + 1], steps[count + 2]) = (o * left, (isMeeting ? SlotOfAtMost(o, axis.States) : o) * right, o * result);
            count += 3;
        }

        Spread(first, steps[..count]);
    }

    /// <summary>Takes each multiplication once for every step, from the last one down, so that none is overwritten before it is read.</summary>
    private void Spread(int first, ReadOnlySpan<int> steps)
    {
        var end = first + ((_written - first) * (steps.Length / 3));
        var to = end - 3;
        for (var at = _written - 3; at >= first; at -= 3)
        {
            var (l, r, o) = (_products[at], _products[at + 1], _products[at + 2]);
            for (var s = steps.Length - 3; s >= 0; s -= 3, to -= 3)
            {
                _products[to] = l + steps[s];
                _products[to + 1] = r + steps[s + 1];
                _products[to + 2] = o + steps[s + 2];
            }
        }

        _written = end;
    }

    private static int StrideOf(TapeValue value, TapeVariable axis) => value.IndexOf(axis) is >= 0 and var index ? value.Strides[index] : 0;
}
