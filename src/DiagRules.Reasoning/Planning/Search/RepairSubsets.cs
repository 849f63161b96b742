using System.Numerics;

namespace DiagRules.Reasoning.Planning.Search;

/// <summary>The best order of a few repairs, and when to hand over, by dynamic programming over the sets already tried (Held and Karp 1962).</summary>
internal sealed class RepairSubsets
{
    private const int Most = 6;

    private readonly CompiledSituation _compiled;
    private readonly MaskCosts _masks;
    private readonly WorkMeter _meter;
    private readonly double[] _mass = new double[1 << Most];
    private readonly double[] _value = new double[1 << Most];
    private readonly double[] _survives = new double[1 << Most];
    private readonly int[] _next = new int[1 << Most];
    private readonly ulong[] _open = new ulong[1 << Most];
    private readonly double[] _keeps = new double[Most];

    internal RepairSubsets(CompiledSituation compiled, MaskCosts masks, WorkMeter meter)
    {
        _compiled = compiled;
        _masks = masks;
        _meter = meter;
    }

    /// <summary>
    /// Whether there are few enough repairs and an order that matters beyond probability over cost.
    /// </summary>
    internal bool Applies(ReadOnlySpan<int> repairs, ReadOnlySpan<double> weights, double[] costs)
    {
        if (repairs.Length is < 2 or > Most)
        {
            return false;
        }

        foreach (var r in repairs)
        {
            if (costs[r] > _compiled.Repairs[r].Cost || Overlaps(r, repairs, weights))
            {
                return true;
            }
        }

        return false;
    }

    internal double Cost(ReadOnlySpan<int> repairs, ReadOnlySpan<double> weights, double mass, OpenState state, List<RepairTrace>? trace)
    {
        var full = (1 << repairs.Length) - 1;
        _meter.Spend(full * (repairs.Length + 4));
        Masses(repairs, weights, mass, full);
        Openings(repairs, state, full);
        for (var set = full; set >= 0; set--)
        {
            (_value[set], _next[set]) = (_compiled.SpecialistCost * _mass[set], -1);
            for (var i = 0; i < repairs.Length; i++)
            {
                var with = set | 1 << i;
                var value = with == set ? double.PositiveInfinity : (Cost(repairs[i], set, state) * _mass[set]) + _value[with];
                if (value < _value[set])
                {
                    (_value[set], _next[set]) = (value, i);
                }
            }
        }

        if (trace is not null)
        {
            Trace(repairs, state, trace);
        }

        return _value[0];
    }

    private bool Overlaps(int repair, ReadOnlySpan<int> repairs, ReadOnlySpan<double> weights)
    {
        foreach (var cure in _compiled.Repairs[repair].Cures)
        {
            if (weights[cure.Cause] > 0)
            {
                foreach (var other in _compiled.RepairsOf[cure.Cause])
                {
                    if (other.Cause != repair && repairs.Contains(other.Cause))
                    {
                        return true;
                    }
                }
            }
        }

        return false;
    }

    /// <summary>The weight that is left after each set of repairs.</summary>
    private void Masses(ReadOnlySpan<int> repairs, ReadOnlySpan<double> weights, double mass, int full)
    {
        var curable = 0.0;
        Array.Clear(_mass, 0, full + 1);
        for (var h = 0; h < _compiled.HypothesisCount; h++)
        {
            if (weights[h] <= 0 || !Keeps(repairs, h))
            {
                continue;
            }

            curable += weights[h];
            _survives[0] = weights[h];
            _mass[0] += weights[h];
            for (var set = 1; set <= full; set++)
            {
                _survives[set] = _survives[set & (set - 1)] * _keeps[BitOperations.TrailingZeroCount(set)];
                _mass[set] += _survives[set];
            }

            _meter.Spend(full);
        }

        var incurable = Math.Max(0, mass - curable);
        for (var set = 0; set <= full; set++)
        {
            _mass[set] += incurable;
        }
    }

    /// <summary>Fills in how each repair leaves this hypothesis; false when none of them cures it.</summary>
    private bool Keeps(ReadOnlySpan<int> repairs, int hypothesis)
    {
        var any = false;
        for (var i = 0; i < repairs.Length; i++)
        {
            _keeps[i] = _compiled.Repairs[repairs[i]].Keeps[hypothesis];
            any |= _keeps[i] < 1;
        }

        return any;
    }

    /// <summary>What has been opened after each set; the order does not matter where masks apply.</summary>
    private void Openings(ReadOnlySpan<int> repairs, OpenState state, int full)
    {
        _open[0] = 0;
        for (var set = 1; set <= full; set++)
        {
            _open[set] = _open[set & (set - 1)] | state.Missing[repairs[BitOperations.TrailingZeroCount(set)]];
        }
    }

    private double Cost(int repair, int set, OpenState state) => _masks.Cost(repair, state.Missing[repair] & ~_open[set]);

    private void Trace(ReadOnlySpan<int> repairs, OpenState state, List<RepairTrace> trace)
    {
        for (var set = 0; _next[set] >= 0; set |= 1 << _next[set])
        {
            var with = set | 1 << _next[set];
            var r = repairs[_next[set]];
            trace.Add(new RepairTrace(r, Cost(r, set, state), _mass[set], _mass[set] - _mass[with]));
        }
    }
}
