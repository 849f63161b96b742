namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>Lays an elimination order out as a tree of buckets with precomputed steps through every table.</summary>
internal sealed class PlanLayout
{
    private readonly PlanDraft _draft;
    private readonly int[] _cards;
    private readonly bool[] _late;
    private readonly int[] _order;
    private readonly int[] _position;
    private readonly int[][] _neighbours;
    private readonly List<int>[] _children;
    private readonly List<int>[] _factors;

    public PlanLayout(PlanDraft draft, EliminationOrder order)
    {
        _draft = draft;
        _cards = draft.Cards;
        _late = draft.Late;
        _order = order.Order;
        _position = new int[_order.Length];
        for (var i = 0; i < _order.Length; i++)
        {
            _position[_order[i]] = i;
        }

        // The slowest axis is eliminated last. So the fastest axis of a message is the variable of the bucket that takes it.
        _neighbours = Array.ConvertAll(order.Neighbours, around => around.OrderByDescending(v => _position[v]).ToArray());
        _children = [.. _order.Select(_ => new List<int>())];
        _factors = [.. _order.Select(_ => new List<int>())];
        Estimate = order.Estimate;
    }

    private InferenceEstimate Estimate { get; }

    public Plan ToPlan(Network network, PlanRequest request, bool[] relevant)
    {
        Distribute();
        var buckets = new Bucket[_order.Length];
        int cells = 0, rows = 0;
        for (var i = 0; i < buckets.Length; i++)
        {
            buckets[i] = BucketAt(i, cells, rows);
            cells += buckets[i].CellCount;
            rows += buckets[i].RowCount;
        }

        return new Plan
        {
            Estimate = Estimate,
            IsAffordable = true,
            Buckets = buckets,
            Links = LinksOf(buckets),
            Factors = [.. _draft.Factors],
            Unaries = [.. _draft.Factors.Where(factor => factor.Free.Length == 1)],
            Constants = [.. _draft.Factors.Where(factor => factor.Free.Length == 0)],
            LocalOffsets = Offsets(),
            BucketOf = _position,
            VariableOf = _draft.VariableOf,
            Roots = Variables(node => network.Nodes[node].Kind == NodeKind.Root),
            OutsideRoots = [.. Enumerable.Range(0, network.Count).Where(node => !relevant[node] && network.Nodes[node].Kind == NodeKind.Root)],
            Softs = Variables(node => network.Nodes[node].Kind != NodeKind.Root && request.ShapeOf(node) == NodeShape.Soft),
            FixedNodes = [.. Enumerable.Range(0, network.Count).Where(node => relevant[node] && request.ShapeOf(node) == NodeShape.Fixed)],
            Splits = [.. _draft.Splits],
            SplitNodes = [.. _draft.SplitNodes],
            CellCount = cells,
            RowCount = rows,
        };
    }

    /// <summary>Gives every factor over several variables and every message to the first bucket that eliminates one of its variables.</summary>
    private void Distribute()
    {
        for (var f = 0; f < _draft.Factors.Count; f++)
        {
            var free = _draft.Factors[f].Free;
            if (free.Length > 1)
            {
                _factors[free.Min(axis => _position[axis.Id])].Add(f);
            }
        }

        for (var i = 0; i < _order.Length; i++)
        {
            if (_neighbours[_order[i]] is [.., var next])
            {
                _children[_position[next]].Add(i);
            }
        }
    }

    private Bucket BucketAt(int index, int cellOffset, int rowOffset)
    {
        var variable = _order[index];
        var around = _neighbours[variable];
        return new Bucket
        {
            Variable = variable,
            Width = _cards[variable],
            RowCount = RowsOver(around),
            CellOffset = cellOffset,
            RowOffset = rowOffset,
            Neighbours = [.. AxesOf(around)],
            IsMaximised = _late[variable],
            Inputs = [.. _factors[index].Select(f => FactorInput(f, variable, around)), .. _children[index].Select(c => MessageInput(c, variable, around))],
            Parent = around.Length == 0 ? -1 : _position[around[^1]],
        };
    }

    private static BucketInput[] LinksOf(Bucket[] buckets)
    {
        var links = new BucketInput[buckets.Length];
        foreach (var input in buckets.SelectMany(bucket => bucket.Inputs).Where(input => input.IsMessage))
        {
            links[input.Source] = input;
        }

        return links;
    }

    private int RowsOver(int[] variables) => variables.Aggregate(1, (product, v) => product * _cards[v]);

    private BucketInput FactorInput(int factor, int variable, int[] around) => Input(factor, isMessage: false, _draft.Factors[factor].Free, variable, around);

    private BucketInput MessageInput(int child, int variable, int[] around)
        => Input(child, isMessage: true, AxesOf(_neighbours[_order[child]]), variable, around);

    /// <summary>The axes of a message over these variables, the last of them fastest.</summary>
    private Axis[] AxesOf(int[] variables)
    {
        var axes = new Axis[variables.Length];
        var stride = 1;
        for (var i = variables.Length - 1; i >= 0; i--)
        {
            axes[i] = new Axis(variables[i], stride);
            stride *= _cards[variables[i]];
        }

        return axes;
    }

    private BucketInput Input(int source, bool isMessage, Axis[] axes, int variable, int[] around)
    {
        var rows = axes.Length == 1 ? null : RowStarts(axes, around);
        return new BucketInput(source, isMessage, rows, axes.First(axis => axis.Id == variable).Stride);
    }

    private int[] RowStarts(Axis[] axes, int[] around)
    {
        var starts = new int[RowsOver(around)];
        var filled = 1;
        for (var i = around.Length - 1; i >= 0; i--)
        {
            var stride = StrideOf(axes, around[i]);
            for (var grade = 1; grade < _cards[around[i]]; grade++)
            {
                for (var row = 0; row < filled; row++)
                {
                    starts[(grade * filled) + row] = starts[row] + (grade * stride);
                }
            }

            filled *= _cards[around[i]];
        }

        return starts;
    }

    private static int StrideOf(Axis[] axes, int variable)
    {
        foreach (var axis in axes)
        {
            if (axis.Id == variable)
            {
                return axis.Stride;
            }
        }

        return 0;
    }

    private int[] Offsets()
    {
        var offsets = new int[_cards.Length + 1];
        for (var v = 0; v < _cards.Length; v++)
        {
            offsets[v + 1] = offsets[v] + _cards[v];
        }

        return offsets;
    }

    private NodeVariable[] Variables(Func<int, bool> isWanted)
        => [.. Enumerable.Range(0, _draft.VariableOf.Length)
            .Where(node => _draft.VariableOf[node] >= 0 && isWanted(node))
            .Select(node => new NodeVariable(_draft.VariableOf[node], node))];
}
