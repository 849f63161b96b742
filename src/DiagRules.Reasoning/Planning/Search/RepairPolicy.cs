namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// The base policy: repairs only, always the one with the best probability of cure per cost next, the specialist when going on costs more.
/// </summary>
/// <remarks>
/// Optimal when every repair cures causes of its own and no access is shared (Kadane and Simon 1977), stopping point included. Repairs behind one
/// closed access are weighed as a block: the access is charged against the best of the prefixes of what lies behind it.
/// Where repairs overlap and few matter, <see cref="RepairSubsets"/> finds the best order exactly.
/// </remarks>
internal sealed class RepairPolicy
{
    private readonly CompiledSituation _compiled;
    private readonly WorkMeter _meter;
    private readonly RepairSubsets _subsets;
    private readonly double[] _weights;
    private readonly double[] _cured;
    private readonly int[] _active;
    private readonly int[] _block;
    private int _activeCount;

    internal RepairPolicy(CompiledSituation compiled, WorkMeter meter)
    {
        _compiled = compiled;
        _meter = meter;
        _subsets = new RepairSubsets(compiled, meter);
        _weights = new double[compiled.Width];
        _cured = new double[compiled.Repairs.Length];
        _active = new int[compiled.Repairs.Length];
        _block = new int[compiled.Repairs.Length];
    }

    /// <summary>Expected cost on unnormalised weights.</summary>
    /// <param name="weights">Weights of the hypotheses.</param>
    /// <param name="mass">Their sum.</param>
    /// <param name="state">What is open.</param>
    /// <param name="tried">Repairs that are out of the running.</param>
    /// <param name="trace">Receives the sequence of repairs up to the best point for handing over, when given.</param>
    internal double Cost(ReadOnlySpan<double> weights, double mass, OpenState state, bool[] tried, List<RepairTrace>? trace = null)
    {
        Begin(weights, state, tried);
        _meter.Spend(_compiled.Width + (_compiled.Repairs.Length * 2));
        return _subsets.Applies(_active.AsSpan(0, _activeCount), weights, state)
            ? _subsets.Cost(_active.AsSpan(0, _activeCount), weights, mass, state, trace)
            : Greedy(mass, state, trace);
    }

    /// <summary>The rule of thumb alone, without the exact order where few repairs matter.</summary>
    internal double GreedyCost(ReadOnlySpan<double> weights, double mass, OpenState state, bool[] tried)
    {
        Begin(weights, state, tried);
        return Greedy(mass, state, null);
    }

    private void Begin(ReadOnlySpan<double> weights, OpenState state, bool[] tried)
    {
        weights.CopyTo(_weights);
        _activeCount = 0;
        var costs = state.RepairCosts;
        for (var r = 0; r < tried.Length; r++)
        {
            _cured[r] = 0;
            if (tried[r] || double.IsPositiveInfinity(costs[r]))
            {
                continue;
            }

            var cured = 0.0;
            foreach (var cure in _compiled.Repairs[r].Cures)
            {
                cured += weights[cure.Cause] * cure.Probability;
            }

            if (cured > 0)
            {
                _cured[r] = cured;
                _active[_activeCount++] = r;
            }
        }
    }

    private double Greedy(double mass, OpenState state, List<RepairTrace>? trace)
    {
        var specialist = _compiled.SpecialistCost;
        var negligible = mass * 1e-15;
        var (best, spent, kept) = (specialist * mass, 0.0, 0);
        while (_activeCount > 0 && mass > negligible)
        {
            var chosen = Choose(state);
            var cost = state.RepairCosts[chosen];
            spent += cost * mass;
            if (spent >= best)
            {
                break;
            }

            var cured = Math.Min(mass, _cured[chosen]);
            trace?.Add(new RepairTrace(chosen, cost, mass, cured));
            _meter.Spend(_activeCount);
            Try(chosen);
            mass -= cured;
            state = state.AfterRepair(chosen);
            if (spent + (specialist * mass) < best)
            {
                best = spent + (specialist * mass);
                kept = trace?.Count ?? 0;
            }
        }

        trace?.RemoveRange(kept, trace.Count - kept);
        return best;
    }

    private int Choose(OpenState state)
    {
        var costs = state.RepairCosts;
        var (chosen, bestRatio) = (_active[0], -1.0);
        for (var i = 0; i < _activeCount; i++)
        {
            var r = _active[i];
            var ratio = Ratio(_cured[r], costs[r]);
            if (ratio > bestRatio)
            {
                (chosen, bestRatio) = (r, ratio);
            }
        }

        foreach (var group in _compiled.RepairGroups)
        {
            var opening = costs[group[0]] - _compiled.Repairs[group[0]].Cost;
            if (opening > 0)
            {
                var first = Block(group, opening, ref bestRatio);
                chosen = first >= 0 ? first : chosen;
            }
        }

        return chosen;
    }

    /// <summary>The first repair of a block behind a closed access, when the best prefix of the block beats the ratio so far; else -1.</summary>
    private int Block(int[] group, double opening, ref double bestRatio)
    {
        var count = 0;
        foreach (var r in group)
        {
            if (_cured[r] > 0)
            {
                Insert(r, count++);
            }
        }

        var (cured, cost, wins) = (0.0, opening, false);
        for (var i = 0; i < count; i++)
        {
            cured += _cured[_block[i]];
            cost += _compiled.Repairs[_block[i]].Cost;
            if (i > 0 && cured / cost > bestRatio)
            {
                bestRatio = cured / cost;
                wins = true;
            }
        }

        return wins ? _block[0] : -1;
    }

    /// <summary>Keeps the block in order of descending probability over its own cost.</summary>
    private void Insert(int repair, int count)
    {
        var ratio = Ratio(_cured[repair], _compiled.Repairs[repair].Cost);
        var at = count;
        while (at > 0 && Ratio(_cured[_block[at - 1]], _compiled.Repairs[_block[at - 1]].Cost) < ratio)
        {
            _block[at] = _block[at - 1];
            at--;
        }

        _block[at] = repair;
    }

    /// <summary>Takes what a repair cures out of the weights and out of what the other repairs would cure.</summary>
    private void Try(int repair)
    {
        _cured[repair] = 0;
        foreach (var cure in _compiled.Repairs[repair].Cures)
        {
            var gone = _weights[cure.Cause] * cure.Probability;
            if (gone <= 0)
            {
                continue;
            }

            _weights[cure.Cause] -= gone;
            foreach (var other in _compiled.RepairsOf[cure.Cause])
            {
                _cured[other.Cause] = Math.Max(0, _cured[other.Cause] - (gone * other.Probability));
            }
        }

        var left = 0;
        for (var i = 0; i < _activeCount; i++)
        {
            if (_cured[_active[i]] > 0)
            {
                _active[left++] = _active[i];
            }
        }

        _activeCount = left;
    }

    private static double Ratio(double cured, double cost) => cost > 0 ? cured / cost : double.PositiveInfinity;
}
