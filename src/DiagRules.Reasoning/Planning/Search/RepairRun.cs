namespace DiagRules.Reasoning.Planning.Search;

/// <summary>A sequence of repairs in the making: what is left of the weights, what every repair would cure of it, and at what cost.</summary>
internal sealed class RepairRun
{
    private readonly CompiledSituation _compiled;
    private readonly OpenStates _states;
    private readonly RepairBlocks _blocks;
    private readonly double[] _weights;
    private readonly double[] _cured;
    private readonly double[] _costs;
    private readonly double[] _ratios;
    private readonly int[] _active;
    private int _activeCount;
    private OpenState _state;
    private ulong _opened;

    internal RepairRun(CompiledSituation compiled, OpenStates states)
    {
        _compiled = compiled;
        _states = states;
        _blocks = new RepairBlocks(compiled);
        _state = states.Start;
        _weights = new double[compiled.Width];
        _cured = new double[compiled.Repairs.Length];
        _costs = new double[compiled.Repairs.Length];
        _ratios = new double[compiled.Repairs.Length];
        _active = new int[compiled.Repairs.Length];
    }

    /// <summary>The repairs that would still cure something.</summary>
    internal ReadOnlySpan<int> Active => _active.AsSpan(0, _activeCount);

    internal double CostOf(int repair) => _costs[repair];

    internal double CuredBy(int repair) => _cured[repair];

    internal void Begin(ReadOnlySpan<double> weights, OpenState state, bool[] tried)
    {
        weights.CopyTo(_weights);
        state.RepairCosts.CopyTo(_costs, 0);
        (_state, _opened, _activeCount) = (state, 0, 0);
        for (var r = 0; r < tried.Length; r++)
        {
            var cured = 0.0;
            if (!tried[r] && !double.IsPositiveInfinity(_costs[r]))
            {
                foreach (var cure in _compiled.Repairs[r].Cures)
                {
                    cured += weights[cure.Cause] * cure.Probability;
                }
            }

            _cured[r] = cured;
            if (cured > 0)
            {
                _ratios[r] = Ratio(cured, _costs[r]);
                _active[_activeCount++] = r;
            }
        }

        _blocks.Begin();
    }

    /// <summary>The repair with the best probability of cure per cost, on its own or as the first of a block.</summary>
    internal int Choose()
    {
        var (chosen, best) = (_active[0], -1.0);
        foreach (var r in Active)
        {
            if (_ratios[r] > best)
            {
                (chosen, best) = (r, _ratios[r]);
            }
        }

        return _blocks.Better(_cured, _costs, best) is var first && first >= 0 ? first : chosen;
    }

    /// <summary>Takes what a repair cures out of the weights and out of what the others would cure, and opens what it needs.</summary>
    internal void Try(int repair)
    {
        Drop(repair);
        foreach (var cure in _compiled.Repairs[repair].Cures)
        {
            var gone = _weights[cure.Cause] * cure.Probability;
            if (gone > 0)
            {
                _weights[cure.Cause] -= gone;
                Reduce(cure.Cause, gone);
            }
        }

        Open(repair);
    }

    private void Reduce(int cause, double gone)
    {
        foreach (var other in _compiled.RepairsOf[cause])
        {
            var r = other.Cause;
            if (_cured[r] > 0)
            {
                _cured[r] -= gone * other.Probability;
                _ratios[r] = Ratio(_cured[r], _costs[r]);
                _blocks.Touch(r);
                if (_cured[r] <= 0)
                {
                    Drop(r);
                }
            }
        }
    }

    private void Drop(int repair)
    {
        _cured[repair] = 0;
        _blocks.Touch(repair);
        var at = Active.IndexOf(repair);
        _activeCount--;
        Array.Copy(_active, at + 1, _active, at, _activeCount - at);
    }

    private void Open(int repair)
    {
        if (_states.Masks is null)
        {
            OpenInSequence(repair);
            return;
        }

        var opening = _state.Missing[repair] & ~_opened;
        if (opening == 0)
        {
            return;
        }

        _opened |= opening;
        foreach (var r in Active)
        {
            if ((_state.Missing[r] & opening) != 0)
            {
                Reprice(r, _states.Masks.Cost(r, _state.Missing[r] & ~_opened));
            }
        }
    }

    private void OpenInSequence(int repair)
    {
        var before = _state;
        _state = _state.AfterRepair(repair);
        if (ReferenceEquals(before, _state))
        {
            return;
        }

        foreach (var r in Active)
        {
            if (_costs[r] != _state.RepairCosts[r])
            {
                Reprice(r, _state.RepairCosts[r]);
            }
        }
    }

    private void Reprice(int repair, double cost)
    {
        _costs[repair] = cost;
        _ratios[repair] = Ratio(_cured[repair], cost);
        _blocks.Touch(repair);
    }

    private static double Ratio(double cured, double cost) => cost > 0 ? cured / cost : double.PositiveInfinity;
}
