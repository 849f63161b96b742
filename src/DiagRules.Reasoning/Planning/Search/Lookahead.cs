namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// Bounded lookahead: a good plan, not always the best. Every number it returns is the expected cost of a plan that can be followed.
/// </summary>
/// <remarks>
/// A node is opened only while the most that could still be saved below it (best plan known minus lower bound, both weighted with the probability
/// of coming there) is above a tolerance. Its steps are ranked by one look at what the plans known so far would cost after each of
/// their answers (<see cref="StepRanking"/>), and the few best are followed up.
/// </remarks>
internal sealed class Lookahead
{
    private const int MostMemories = 20_000;
    private const int DeepestAllowed = 40;

    private readonly Board _board;
    private readonly CompiledSituation _compiled;
    private readonly PlanPool _pool;
    private readonly StepRanking _stepRanking;
    private readonly Dictionary<(UInt128, int), Memory> _memory = [];
    private readonly List<Ranking> _rankings = [];
    private readonly List<RepairTrace> _trace = [];
    private double _tolerance;
    private double _breadth;

    internal Lookahead(Board board)
    {
        _board = board;
        _compiled = board.Compiled;
        _pool = new PlanPool(board);
        _stepRanking = new StepRanking(board, _pool);
    }

    /// <summary>The most steps looked ahead since this was set.</summary>
    internal int Deepest { get; set; }

    /// <summary>Takes up the base policy and, for every repair, the plan that begins with it: the plans to start from.</summary>
    internal void Prepare(in Position start)
    {
        Repairs(start);
        for (var r = 0; r < _compiled.Repairs.Length; r++)
        {
            if (_compiled.Repairs[r].IsWorthPlanning && double.IsFinite(start.State.RepairCosts[r]))
            {
                var next = _board.EnterRepair(start, r, 1);
                var then = Repairs(next);
                _board.LeaveRepair(r);
                _pool.Add(AfterRepair(start.State, r, then));
            }
        }
    }

    /// <summary>Begins another pass; what was found in earlier ones is kept.</summary>
    /// <param name="tolerance">The most that a node may leave unsaved, in expected cost of the whole job.</param>
    /// <param name="breadth">0: the best step of each node is followed up; above, more of them where much can be saved.</param>
    internal void Restart(double tolerance, double breadth)
    {
        _tolerance = tolerance;
        _breadth = breadth;
    }

    /// <summary>The expected cost of a check and what is best after it as far as is known; more than the limit when it is not below that.</summary>
    internal double Check(in Position at, int check, double limit, int depth, out PlanVector? plan)
    {
        var opened = at.State.AfterCheck(check, out var cost);
        var outcomes = _compiled.Checks[check].Outcomes;
        var continuations = new PlanVector[outcomes.Length];
        var costs = new double[_compiled.Width];
        Array.Fill(costs, cost, 0, _compiled.HypothesisCount);
        var total = cost * at.Mass;
        for (var o = 0; o < outcomes.Length && total < limit; o++)
        {
            var next = _board.EnterOutcome(at, check, o, opened, depth);
            continuations[o] = Value(next, depth + 1, out var value);
            _board.LeaveOutcome(check, o);
            total += value;
            Weights.AddProduct(outcomes[o].Likelihood, continuations[o].Costs, costs);
        }

        plan = total < limit ? PlanVector.After(costs, at.State, check, -1, continuations, _compiled) : null;
        return total;
    }

    internal double Repair(in Position at, int repair, int depth, out PlanVector plan)
    {
        var next = _board.EnterRepair(at, repair, depth);
        var then = Value(next, depth + 1, out var value);
        _board.LeaveRepair(repair);
        plan = AfterRepair(at.State, repair, then);
        return (at.State.RepairCosts[repair] * at.Mass) + value;
    }

    private PlanVector AfterRepair(OpenState state, int repair, PlanVector then)
    {
        var costs = new double[_compiled.Width];
        Array.Fill(costs, state.RepairCosts[repair], 0, _compiled.HypothesisCount);
        Weights.AddProduct(_compiled.Repairs[repair].Keeps, then.Costs, costs);
        return PlanVector.After(costs, state, -1, repair, [then], _compiled);
    }

    /// <summary>The best plan known from a position, looked for as long as the tolerance asks for it.</summary>
    private PlanVector Value(in Position at, int depth, out double value)
    {
        Deepest = Math.Max(Deepest, depth);
        if (at.Mass <= 0)
        {
            value = 0;
            return PlanVector.Specialist(_compiled, at.State);
        }

        if (_memory.TryGetValue(at.Memo, out var known) && known.Tolerance <= _tolerance)
        {
            value = known.Value;
            return known.Plan;
        }

        var plan = Known(at, known, out value);
        var gap = value - at.Floor;
        if (gap > _tolerance && depth < DeepestAllowed && !_board.Meter.IsExhausted)
        {
            plan = Follow(at, plan, gap, depth, ref value);
            Remember(at, plan, value);
        }

        return plan;
    }

    /// <summary>The best of what is remembered, of the pool and of the base policy.</summary>
    private PlanVector Known(in Position at, Memory known, out double value)
    {
        var plan = _pool.Select(at, out var least);
        if (known.Plan is not null && known.Value < least)
        {
            (plan, least) = (known.Plan, known.Value);
        }

        if (plan is not null && least - at.Floor <= _tolerance)
        {
            value = least;
            return plan;
        }

        _trace.Clear();
        var repairsOnly = _board.Policy.Cost(at.Weights, at.Mass, at.State, _board.Tried, _trace);
        if (plan is not null && least <= repairsOnly * (1 + 1e-12))
        {
            value = least;
            return plan;
        }

        value = repairsOnly;
        plan = PlanVector.Sequence(_compiled, at.State, _trace);
        _pool.Add(plan);
        return plan;
    }

    private PlanVector Follow(in Position at, PlanVector plan, double gap, int depth, ref double value)
    {
        var ranking = RankingAt(depth);
        _stepRanking.Rank(at, value, ranking);
        var width = Math.Min(ranking.Count, Width(gap));
        var isNew = false;
        for (var i = 0; i < width && !_board.Meter.IsExhausted; i++)
        {
            var step = ranking[i].Step;
            PlanVector? found;
            var total = step < 0 ? Repair(at, ~step, depth, out found!) : Check(at, step, value, depth, out found);
            if (total < value)
            {
                (value, plan, isNew) = (total, found!, true);
            }
        }

        if (isNew)
        {
            _pool.Add(plan);
        }

        return plan;
    }

    private void Remember(in Position at, PlanVector plan, double value)
    {
        if (_memory.Count < MostMemories && !_board.Meter.IsExhausted)
        {
            _memory[at.Memo] = new Memory(plan, value, _tolerance);
        }
    }

    private PlanVector Repairs(in Position at)
    {
        _trace.Clear();
        if (at.Mass > 0)
        {
            _board.Policy.Cost(at.Weights, at.Mass, at.State, _board.Tried, _trace);
        }

        var plan = PlanVector.Sequence(_compiled, at.State, _trace);
        if (_trace.Count > 0)
        {
            _pool.Add(plan);
        }

        return plan;
    }

    /// <summary>Where more can be saved more steps are followed up.</summary>
    private int Width(double gap) => 1 + (int)(_breadth * Math.Log2(Math.Max(1, gap / (4 * _tolerance))));

    private Ranking RankingAt(int depth)
    {
        while (_rankings.Count <= depth)
        {
            _rankings.Add(new Ranking(_compiled.Checks.Length + _compiled.Repairs.Length));
        }

        return _rankings[depth];
    }

    private readonly record struct Memory(PlanVector Plan, double Value, double Tolerance);
}
