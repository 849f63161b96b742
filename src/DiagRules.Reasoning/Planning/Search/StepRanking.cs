namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Chooses the steps that tell most per cost at a position, to be followed up.</summary>
/// <remarks>
/// What a step tells is the mutual information of its answer and what is wrong (Shannon 1948), which looks beyond the next repair as no single look at
/// costs does. With <c>H(w) = |w| log |w| - sum of w log w</c> a check tells <c>H(w) - sum over answers of H(w P(answer))</c>; that takes one dot
/// product for each answer and one with <see cref="CompiledCheck.Doubt"/>. A repair tells <c>H(w) - H(w (1 - cures))</c>: nothing is left to find out
/// once it has cured. Its price is lost only when it was in vain; otherwise it was to be paid anyway.
/// Checks behind the same closed access are looked at together as well: the access is charged once against what the best of them tells, half of
/// the second best, a quarter of the third and so on, since what they tell overlaps. So one dear access is not turned down check by check.
/// </remarks>
internal sealed class StepRanking
{
    /// <summary>No step tells anything.</summary>
    private const int None = int.MaxValue;

    /// <summary>What tells less than this, in nats, tells nothing but rounding.</summary>
    private const double Least = 1e-9;

    private readonly Board _board;
    private readonly double[] _told;
    private readonly double[] _checkRates;
    private readonly double[] _repairRates;
    private readonly int[] _group;
    private readonly double _free;

    internal StepRanking(Board board)
    {
        _board = board;
        _told = new double[board.Compiled.Checks.Length];
        _checkRates = new double[_told.Length];
        _group = new int[_told.Length];
        _repairRates = new double[board.Compiled.Repairs.Length];
        _free = Math.Max(board.Compiled.SpecialistCost, 1e-9) * 1e-6;
    }

    /// <summary>The best steps, best first: checks, and the complements of repairs.</summary>
    internal int[] Best(in Position at, int count)
    {
        Rate(at);
        var best = new List<int>(count);
        while (best.Count < count && TakeBest() is var step && step != None)
        {
            best.Add(step);
        }

        return [.. best];
    }

    private int TakeBest()
    {
        var check = Largest(_checkRates, out var ofCheck);
        var repair = Largest(_repairRates, out var ofRepair);
        if (ofCheck <= 0 && ofRepair <= 0)
        {
            return None;
        }

        if (ofCheck >= ofRepair)
        {
            _checkRates[check] = 0;
            return check;
        }

        _repairRates[repair] = 0;
        return ~repair;
    }

    private static int Largest(double[] rates, out double largest)
    {
        var best = -1;
        largest = 0;
        for (var i = 0; i < rates.Length; i++)
        {
            (best, largest) = rates[i] > largest ? (i, rates[i]) : (best, largest);
        }

        return best;
    }

    private void Rate(in Position at)
    {
        for (var c = 0; c < _told.Length; c++)
        {
            _told[c] = _board.IsPlannable(c) ? ToldByCheck(at, c) : 0;
            _checkRates[c] = 0;
            if (_told[c] > Least * at.Mass)
            {
                at.State.AfterCheck(c, out var cost);
                _checkRates[c] = _told[c] / Math.Max(cost, _free);
            }
        }

        foreach (var group in _board.Compiled.CheckGroups)
        {
            RateTogether(at, group);
        }

        for (var r = 0; r < _repairRates.Length; r++)
        {
            _repairRates[r] = _board.Tried[r] || !at.State.IsReady(_board.Compiled.Repairs[r]) ? 0 : RateOfRepair(at, r);
        }
    }

    private double ToldByCheck(in Position at, int check)
    {
        var compiled = _board.Compiled.Checks[check];
        _board.Meter.Spend((compiled.Outcomes.Length + 1) * ((_board.Compiled.Width / 16) + 4));
        var told = Surprise(at.Mass) - Weights.Dot(at.Weights, compiled.Doubt);
        foreach (var outcome in compiled.Outcomes)
        {
            told -= Surprise(Weights.Dot(at.Weights, outcome.Likelihood));
        }

        return told;
    }

    private double RateOfRepair(in Position at, int repair)
    {
        var (cured, told) = (0.0, 0.0);
        foreach (var cure in _board.Compiled.Repairs[repair].Cures)
        {
            var before = at.Weights[cure.Cause];
            if (before > 0)
            {
                var after = before * (1 - cure.Probability);
                cured += before - after;
                told += Surprise(after) - Surprise(before);
            }
        }

        told += Surprise(at.Mass) - Surprise(at.Mass - cured);
        return cured > 0 ? told / Math.Max(at.State.RepairCosts[repair] * (1 - (cured / at.Mass)), _free) : 0;
    }

    private void RateTogether(in Position at, int[] group)
    {
        var count = 0;
        foreach (var c in group)
        {
            if (_told[c] > Least * at.Mass)
            {
                Insert(c, count++);
            }
        }

        if (count < 2)
        {
            return;
        }

        var first = _group[0];
        at.State.AfterCheck(first, out var alone);
        var (told, cost, share) = (0.0, alone - _board.Compiled.Checks[first].Cost, 1.0);
        for (var i = 0; i < count; i++)
        {
            told += _told[_group[i]] * share;
            cost += _board.Compiled.Checks[_group[i]].Cost;
            share /= 2;
            _checkRates[first] = Math.Max(_checkRates[first], told / Math.Max(cost, _free));
        }
    }

    /// <summary>Keeps the order by what is told, most first.</summary>
    private void Insert(int check, int count)
    {
        var at = count;
        for (; at > 0 && _told[_group[at - 1]] < _told[check]; at--)
        {
            _group[at] = _group[at - 1];
        }

        _group[at] = check;
    }

    private static double Surprise(double mass) => mass > 0 ? mass * Math.Log(mass) : 0;
}
