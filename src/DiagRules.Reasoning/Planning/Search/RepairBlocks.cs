namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// Repairs that need the same accesses and come after the same checks, valued together while these are to be opened: a prefix of the block, best
/// probability per own cost first, has the ratio of all it cures to all it costs, the opening paid once.
/// </summary>
internal sealed class RepairBlocks
{
    private readonly CompiledSituation _compiled;
    private readonly int[][] _blocks;
    private readonly int[] _blockOf;
    private readonly double[] _ratios;
    private readonly int[] _firsts;
    private readonly bool[] _isStale;
    private readonly int[] _order;

    internal RepairBlocks(CompiledSituation compiled)
    {
        _compiled = compiled;
        _blocks = compiled.RepairGroups;
        _blockOf = new int[compiled.Repairs.Length];
        _ratios = new double[_blocks.Length];
        _firsts = new int[_blocks.Length];
        _isStale = new bool[_blocks.Length];
        _order = new int[compiled.Repairs.Length];
        Array.Fill(_blockOf, -1);
        for (var b = 0; b < _blocks.Length; b++)
        {
            foreach (var r in _blocks[b])
            {
                _blockOf[r] = b;
            }
        }
    }

    internal void Begin() => Array.Fill(_isStale, true);

    /// <summary>Says that a repair cures less or costs less than before.</summary>
    internal void Touch(int repair)
    {
        if (_blockOf[repair] >= 0)
        {
            _isStale[_blockOf[repair]] = true;
        }
    }

    /// <summary>The first repair of the best block, if that has a better ratio than the one given; else -1.</summary>
    internal int Better(double[] cured, double[] costs, double ratio)
    {
        var first = -1;
        for (var b = 0; b < _blocks.Length; b++)
        {
            if (_isStale[b])
            {
                Value(b, cured, costs);
                _isStale[b] = false;
            }

            if (_ratios[b] > ratio)
            {
                (first, ratio) = (_firsts[b], _ratios[b]);
            }
        }

        return first;
    }

    private void Value(int block, double[] cured, double[] costs)
    {
        var count = 0;
        foreach (var r in _blocks[block])
        {
            if (cured[r] > 0)
            {
                Insert(r, cured, count++);
            }
        }

        _ratios[block] = -1;
        var opening = count > 0 ? costs[_order[0]] - _compiled.Repairs[_order[0]].Cost : 0;
        if (count < 2 || opening <= 0)
        {
            return;
        }

        var (curedTogether, cost) = (0.0, opening);
        _firsts[block] = _order[0];
        for (var i = 0; i < count; i++)
        {
            curedTogether += cured[_order[i]];
            cost += _compiled.Repairs[_order[i]].Cost;
            _ratios[block] = i > 0 ? Math.Max(_ratios[block], curedTogether / cost) : -1;
        }
    }

    /// <summary>Keeps the order by descending probability over own cost; products instead of quotients, since a cost may be 0.</summary>
    private void Insert(int repair, double[] cured, int count)
    {
        var at = count;
        while (at > 0 && cured[_order[at - 1]] * _compiled.Repairs[repair].Cost < cured[repair] * _compiled.Repairs[_order[at - 1]].Cost)
        {
            _order[at] = _order[at - 1];
            at--;
        }

        _order[at] = repair;
    }
}
