namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// Bounded lookahead: a good plan, not always the best. Every number it returns is the expected cost of a plan that can be followed.
/// </summary>
/// <remarks>
/// A node is opened only while the most that could still be saved below it (best plan known minus lower bound, both weighted with the probability
/// of coming there) is above a tolerance. The steps that tell most per cost (<see cref="StepRanking"/>) are followed up.
/// Whatever plan is known before a step is followed after it as well (<see cref="PlanReuse"/>), so that a step is never rated worse than itself
/// and that plan.
/// </remarks>
internal sealed class Lookahead
{
    private const int MostMemories = 20_000;
    private const int DeepestAllowed = 40;

    /// <summary>Up to this many nodes a plan is small enough to be fitted to the last branch.</summary>
    private const int MostOfASmallPlan = 500;

    private readonly Board _board;
    private readonly CompiledSituation _compiled;
    private readonly StepRanking _stepRanking;
    private readonly RepairEndings _endings;
    private readonly PlanPool _pool;
    private readonly PlanReuse _reuse;
    private readonly Dictionary<(UInt128, int), Memory> _memory = [];
    private double _tolerance;
    private int _width;

    internal Lookahead(Board board)
    {
        _board = board;
        _compiled = board.Compiled;
        _stepRanking = new StepRanking(board);
        _endings = new RepairEndings(board);
        _pool = new PlanPool(board);
        _reuse = new PlanReuse(board, _pool, _endings);
    }

    /// <summary>The most steps looked ahead since this was set.</summary>
    internal int Deepest { get; set; }

    /// <summary>How many nodes were opened.</summary>
    internal int Nodes { get; private set; }

    /// <summary>The steps that tell most per cost: checks and complements of repairs.</summary>
    internal int[] Telling(in Position at, int count) => _stepRanking.Best(at, count);

    /// <summary>Whether a check leaves everything possible that was possible before it.</summary>
    internal bool ObstructsNothing(int check) =>
        !_compiled.Openings.HasExclusions && Array.TrueForAll(_compiled.Checks[check].Outcomes, outcome => outcome.Pointless.Length == 0);

    /// <summary>Begins another pass; what was found in earlier ones is kept.</summary>
    /// <param name="tolerance">The most that a node may leave unsaved, in expected cost of the whole job.</param>
    /// <param name="width">How many steps are followed up at each node.</param>
    internal void Restart(double tolerance, int width)
    {
        _tolerance = tolerance;
        _width = width;
    }

    /// <summary>The expected cost of a check and what is best after it as far as is known; more than the limit when it is not below that.</summary>
    /// <param name="at">Where.</param>
    /// <param name="check">Which.</param>
    /// <param name="guide">A plan known before the check; null when there is none.</param>
    /// <param name="limit">What it must stay below.</param>
    /// <param name="depth">The depth of the position.</param>
    /// <param name="plan">The plan, when it stays below the limit.</param>
    internal double Check(in Position at, int check, PlanVector? guide, double limit, int depth, out PlanVector? plan)
    {
        var opened = at.State.AfterCheck(check, out var cost);
        var then = new PlanVector[_compiled.Checks[check].Outcomes.Length];
        var total = cost * at.Mass;
        var floors = double.IsInfinity(limit) ? 0 : Floors(at, check, opened);
        plan = null;
        for (var o = 0; o < then.Length; o++)
        {
            if (total + floors >= limit)
            {
                return total + floors;
            }

            var next = _board.EnterOutcome(at, check, o, opened, depth);
            then[o] = Value(next, guide, depth + 1, out var value);
            floors -= double.IsInfinity(limit) ? 0 : next.Floor;
            _board.LeaveOutcome(check, o);
            total += value;
        }

        plan = total < limit ? PlanVector.AfterCheck(_compiled, at.State, check, then) : null;
        return total;
    }

    /// <summary>The expected cost of a repair and what is best after it in vain, as far as is known.</summary>
    internal double Repair(in Position at, int repair, PlanVector? guide, int depth, out PlanVector plan)
    {
        var next = _board.EnterRepair(at, repair, depth);
        var then = Value(next, guide, depth + 1, out var value);
        _board.LeaveRepair(repair);
        plan = PlanVector.AfterRepair(_compiled, at.State, repair, then);
        return (at.State.RepairCosts[repair] * at.Mass) + value;
    }

    /// <summary>What it costs to do a check first and then to follow a plan that is known already.</summary>
    internal double CheckThen(in Position at, int check, PlanVector guide)
    {
        var opened = at.State.AfterCheck(check, out var cost);
        var total = cost * at.Mass;
        for (var o = 0; o < _compiled.Checks[check].Outcomes.Length; o++)
        {
            var next = _board.EnterOutcome(at, check, o, opened, 1);
            total += next.Mass > 0 ? Then(next, guide) : 0;
            _board.LeaveOutcome(check, o);
        }

        return total;
    }

    /// <summary>What it costs to try a repair first and then to follow a plan that is known already.</summary>
    internal double RepairThen(in Position at, int repair, PlanVector guide)
    {
        var next = _board.EnterRepair(at, repair, 1);
        var total = (at.State.RepairCosts[repair] * at.Mass) + (next.Mass > 0 ? Then(next, guide) : 0);
        _board.LeaveRepair(repair);
        return total;
    }

    private double Then(in Position at, PlanVector guide)
    {
        _pool.Best(at, out var value);
        value = Math.Min(value, _reuse.Cost(guide, at, 2, Nodes > MostOfASmallPlan ? PlanReuse.Negligible : 0));
        return _memory.TryGetValue(at.Memo, out var known) ? Math.Min(value, known.Value) : value;
    }

    private double Floors(in Position at, int check, OpenState opened)
    {
        var floors = 0.0;
        foreach (var outcome in _compiled.Checks[check].Outcomes)
        {
            floors += Weights.Dot(at.Weights, outcome.Likelihood, opened.AfterOutcome(outcome).Floor);
        }

        return floors;
    }

    /// <summary>The best plan known from a position, looked for as long as the tolerance asks for it.</summary>
    private PlanVector Value(in Position at, PlanVector? guide, int depth, out double value)
    {
        Deepest = Math.Max(Deepest, depth);
        if (at.Mass <= 0)
        {
            value = 0;
            return _endings.None(at.State);
        }

        var plan = Ready(at, guide, out value);
        var floor = at.Floor;
        if (plan is not null && value - floor <= _tolerance)
        {
            return plan;
        }

        var isKnown = _memory.TryGetValue(at.Memo, out var known);
        if (isKnown)
        {
            Better(known.Plan, known.Value, ref plan, ref value);
        }
        else
        {
            known = new Memory(End(at, ref plan, ref value), value, double.PositiveInfinity, [], 0);
        }

        if (guide is not null && plan != guide && value - floor > _tolerance)
        {
            plan = _reuse.Fit(guide, at, depth, ref value) ?? plan;
        }

        if (value - floor > _tolerance && (known.Tolerance > _tolerance || known.Width < _width) && depth < DeepestAllowed && !_board.Meter.IsExhausted)
        {
            var steps = known.Width >= _width ? known.Steps : _stepRanking.Best(at, _width);
            plan = Follow(at, plan!, steps, depth, ref value);
            known = known with { Steps = steps, Width = _width, Tolerance = _board.Meter.IsExhausted ? double.PositiveInfinity : _tolerance };
        }

        if (_memory.Count < MostMemories || isKnown)
        {
            _memory[at.Memo] = known with { Plan = plan!, Value = value };
        }

        return plan!;
    }

    /// <summary>The cheapest plan at hand that can be followed as it stands.</summary>
    private PlanVector? Ready(in Position at, PlanVector? guide, out double value)
    {
        var plan = _pool.Best(at, out value);
        if (guide is not null && _board.CanFollow(guide, at.State))
        {
            Better(guide, Weights.Dot(at.Weights, guide.Costs), ref plan, ref value);
        }

        return plan;
    }

    /// <summary>Repairs alone; worth remembering as a plan where they beat what is at hand.</summary>
    private PlanVector End(in Position at, ref PlanVector? plan, ref double value)
    {
        var before = value;
        var ending = _endings.Best(at, isWanted: true, out var cost)!;
        Better(ending, cost, ref plan, ref value);
        if (value < before * (1 - 1e-12))
        {
            _pool.Add(ending);
        }

        return plan!;
    }

    private PlanVector Follow(in Position at, PlanVector plan, int[] steps, int depth, ref double value)
    {
        Nodes++;
        foreach (var step in steps)
        {
            if (_board.Meter.IsExhausted)
            {
                break;
            }

            PlanVector? found;
            var total = step < 0 ? Repair(at, ~step, plan, depth, out found!) : Check(at, step, plan, value, depth, out found);
            if (total < value)
            {
                (value, plan) = (total, found!);
                _pool.Add(plan);
            }
        }

        return plan;
    }

    private static void Better(PlanVector found, double cost, ref PlanVector? plan, ref double value)
    {
        if (cost < value)
        {
            (plan, value) = (found, cost);
        }
    }

    /// <param name="Plan">The best plan known.</param>
    /// <param name="Value">What it costs.</param>
    /// <param name="Tolerance">The closest tolerance it was looked for with.</param>
    /// <param name="Steps">The steps that were followed up.</param>
    /// <param name="Width">How many were asked for; there may be fewer.</param>
    private readonly record struct Memory(PlanVector Plan, double Value, double Tolerance, int[] Steps, int Width);
}
