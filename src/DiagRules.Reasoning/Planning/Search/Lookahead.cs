namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// Bounded lookahead: a good plan, not always the best. Every number it returns is the expected cost of a plan that can be followed.
/// </summary>
/// <remarks>
/// A node is opened only while the most that could still be saved below it (base policy minus lower bound, both weighted with the probability of
/// coming there) is above a tolerance. Its checks are ranked by one step on the real distribution of their answers, with the base policy after it,
/// and the few best are followed up. Checks behind the same closed access are ranked by the best set of them as well, so that one
/// dear access is not turned down check by check.
/// </remarks>
internal sealed class Lookahead
{
    private const int MostMemories = 200_000;
    private const int DeepestAllowed = 40;

    private readonly Board _board;
    private readonly Bundles _bundles;
    private readonly Dictionary<(UInt128, int), Memory> _memory = [];
    private readonly List<Ranking> _rankings = [];
    private double _tolerance;

    internal Lookahead(Board board)
    {
        _board = board;
        _bundles = new Bundles(board);
    }

    internal int Deepest { get; private set; }

    /// <summary>The most that a node may leave unsaved, in expected cost of the whole job.</summary>
    internal void Restart(double tolerance)
    {
        _tolerance = tolerance;
        Deepest = 0;
    }

    /// <summary>Ranks the first steps by one step and bundles; used once, before anything is followed up.</summary>
    internal void Rank(in Position at, Ranking ranking)
    {
        ranking.Clear();
        var checks = _board.Compiled.Checks;
        for (var c = 0; c < checks.Length; c++)
        {
            if (_board.IsPlannable(c))
            {
                ranking.Add(c, OneStep(at, c, at.State));
            }
        }

        _bundles.Rank(at, ranking);
        for (var r = 0; r < _board.Tried.Length; r++)
        {
            var repair = _board.Compiled.Repairs[r];
            if (!_board.Tried[r] && at.State.IsReady(repair) && Array.Exists(repair.Cures, at.Cures))
            {
                ranking.Add(~r, OneRepair(at, r));
            }
        }
    }

    internal double Check(in Position at, int check, double limit, int depth)
    {
        var opened = at.State.AfterCheck(check, out var cost);
        var outcomes = _board.Compiled.Checks[check].Outcomes;
        var total = cost * at.Mass;
        for (var o = 0; o < outcomes.Length && total < limit; o++)
        {
            var next = _board.EnterOutcome(at, check, o, opened, depth);
            total += Value(next, depth + 1);
            _board.LeaveOutcome(check, o);
        }

        return total;
    }

    internal double Repair(in Position at, int repair, int depth)
    {
        var cost = at.State.RepairCosts[repair] * at.Mass;
        var next = _board.EnterRepair(at, repair, depth);
        var value = cost + Value(next, depth + 1);
        _board.LeaveRepair(repair);
        return value;
    }

    private double Value(in Position at, int depth)
    {
        Deepest = Math.Max(Deepest, depth);
        if (at.Mass <= 0)
        {
            return 0;
        }

        if (_memory.TryGetValue(at.Memo, out var known) && known.Tolerance <= _tolerance)
        {
            return known.Value;
        }

        var best = _board.PolicyCost(at);
        var gap = best - at.Floor;
        if (gap <= _tolerance || depth >= DeepestAllowed || _board.Meter.IsExhausted)
        {
            return Math.Min(best, known.Value > 0 ? known.Value : best);
        }

        best = Follow(at, best, gap, depth);
        best = known.Value > 0 ? Math.Min(best, known.Value) : best;
        if (_memory.Count < MostMemories && !_board.Meter.IsExhausted)
        {
            _memory[at.Memo] = new Memory(best, _tolerance);
        }

        return best;
    }

    private double Follow(in Position at, double best, double gap, int depth)
    {
        var ranking = RankingAt(depth);
        Rank(at, ranking);
        ranking.Sort();
        var width = Math.Min(ranking.Count, Width(gap));
        for (var i = 0; i < width && !_board.Meter.IsExhausted; i++)
        {
            var step = ranking[i].Step;
            best = Math.Min(best, step < 0 ? Repair(at, ~step, depth) : Check(at, step, best, depth));
        }

        return best;
    }

    /// <summary>Nodes where more can be saved get more of their steps followed up.</summary>
    private int Width(double gap) => 1 + (int)Math.Log2(Math.Max(1, gap / (4 * _tolerance)));

    private double OneStep(in Position at, int check, OpenState state)
    {
        var opened = state.AfterCheck(check, out var cost);
        var outcomes = _board.Compiled.Checks[check].Outcomes;
        var total = cost * at.Mass;
        for (var o = 0; o < outcomes.Length; o++)
        {
            var next = _board.EnterOutcome(at, check, o, opened, DeepestAllowed + 1);
            total += _board.PolicyCost(next);
            _board.LeaveOutcome(check, o);
        }

        return total;
    }

    private double OneRepair(in Position at, int repair)
    {
        var cost = at.State.RepairCosts[repair] * at.Mass;
        var next = _board.EnterRepair(at, repair, DeepestAllowed + 1);
        var total = cost + _board.PolicyCost(next);
        _board.LeaveRepair(repair);
        return total;
    }

    private Ranking RankingAt(int depth)
    {
        while (_rankings.Count <= depth)
        {
            _rankings.Add(new Ranking(_board.Compiled.Checks.Length + _board.Compiled.Repairs.Length));
        }

        return _rankings[depth];
    }

    private readonly record struct Memory(double Value, double Tolerance);
}
