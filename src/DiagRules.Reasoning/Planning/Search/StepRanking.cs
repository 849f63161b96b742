namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Ranks the steps at a position by one look ahead, to choose those worth following up. Its numbers are promises, not plans.</summary>
/// <remarks>
/// A check promises what the plans in the pool would cost after its answers. (Crediting it in advance with the access that it opens for repairs was
/// tried and led the search astray: plans that share the access turn up by themselves once the check is followed up.)
/// Checks behind the same closed access are looked at together as well: the access is charged once against the best of them, half of the gain of the
/// second best, a quarter of the third and so on, since what they tell overlaps. So one dear access is not turned down check by check.
/// </remarks>
internal sealed class StepRanking(Board board, PlanPool pool)
{
    private readonly double[] _weights = new double[board.Compiled.Width];
    private readonly double[] _gains = new double[board.Compiled.Checks.Length];
    private readonly double[] _sorted = new double[board.Compiled.Checks.Length];

    /// <summary>Fills the ranking, best first.</summary>
    /// <param name="at">Where.</param>
    /// <param name="known">What the best plan known costs from there.</param>
    /// <param name="ranking">Receives the steps.</param>
    internal void Rank(in Position at, double known, Ranking ranking)
    {
        ranking.Clear();
        pool.Select(at, out _);
        for (var c = 0; c < board.Compiled.Checks.Length; c++)
        {
            _gains[c] = 0;
            if (board.IsPlannable(c))
            {
                var opened = at.State.AfterCheck(c, out var cost);
                var promise = (cost * at.Mass) + AfterCheck(at, c, opened);
                _gains[c] = known - promise + ((cost - board.Compiled.Checks[c].Cost) * at.Mass);
                ranking.Add(c, promise);
            }
        }

        Bundles(at, known, ranking);
        for (var r = 0; r < board.Tried.Length; r++)
        {
            var repair = board.Compiled.Repairs[r];
            if (!board.Tried[r] && at.State.IsReady(repair) && Array.Exists(repair.Cures, at.Cures))
            {
                ranking.Add(~r, (at.State.RepairCosts[r] * at.Mass) + AfterRepair(at, r));
            }
        }

        ranking.Sort();
    }

    private double AfterCheck(in Position at, int check, OpenState opened)
    {
        var total = 0.0;
        var isKnown = pool.LeaveOutCheck(check);
        foreach (var outcome in board.Compiled.Checks[check].Outcomes)
        {
            if (isKnown)
            {
                total += pool.Least(outcome.Likelihood);
                continue;
            }

            var mass = Weights.Multiply(at.Weights, outcome.Likelihood, _weights);
            total += mass > 0 ? board.Policy.Cost(_weights, mass, opened.AfterOutcome(outcome), board.Tried) : 0;
        }

        return total;
    }

    private double AfterRepair(in Position at, int repair)
    {
        var keeps = board.Compiled.Repairs[repair].Keeps;
        var handedOver = board.Compiled.SpecialistCost * Weights.Dot(at.Weights, keeps);
        return pool.LeaveOutRepair(repair) ? Math.Min(handedOver, pool.Least(keeps)) : handedOver;
    }

    private void Bundles(in Position at, double known, Ranking ranking)
    {
        foreach (var group in board.Compiled.CheckGroups)
        {
            var count = 0;
            var first = -1;
            foreach (var c in group)
            {
                if (board.IsPlannable(c) && _gains[c] > 0)
                {
                    first = first < 0 || _gains[c] > _gains[first] ? c : first;
                    _sorted[count++] = -_gains[c];
                }
            }

            if (count > 1)
            {
                at.State.AfterCheck(first, out var cost);
                ranking.Promise(first, known + ((cost - board.Compiled.Checks[first].Cost) * at.Mass) - Together(count));
            }
        }
    }

    private double Together(int count)
    {
        Array.Sort(_sorted, 0, count);
        var (gain, share) = (0.0, 1.0);
        for (var i = 0; i < count; i++)
        {
            gain -= _sorted[i] * share;
            share /= 2;
        }

        return gain;
    }
}
