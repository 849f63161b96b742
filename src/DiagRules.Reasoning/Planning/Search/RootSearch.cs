namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Works out every first step: a look at each, then the promising ones deeper and deeper, exactly where that is within reach.</summary>
internal sealed class RootSearch
{
    /// <summary>What the first round of the lookahead leaves unsaved at a node, as a share of the expected cost.</summary>
    private const double FirstTolerance = 0.08;

    /// <summary>Rounds get closer by this factor where the work left allows it.</summary>
    private const double Closer = 0.25;

    /// <summary>From this share of the expected cost on it gains more to try other steps than to look closer still.</summary>
    private const double CloseEnough = 1e-4;

    /// <summary>The share of the specialist's price that the first look leaves unsaved after each answer.</summary>
    private const double FirstLook = 0.02;

    private const int MostRounds = 40;

    private const int RoundsBeforeExact = 3;

    /// <summary>How many first steps each round follows up, the last number again and again.</summary>
    private static readonly int[] Candidates = [8, 4, 2, 1];

    /// <summary>What a position of the exact search costs on average, bounds considered.</summary>
    private const double WorkOfAPosition = 20;

    private readonly CompiledSituation _compiled;
    private readonly WorkMeter _meter;
    private readonly Board _board;
    private readonly Lookahead _lookahead;
    private readonly bool _searchExactly;
    private readonly List<RepairTrace> _trace = [];
    private readonly List<RootStep> _steps = [];
    private PlanVector? _best;
    private PlanVector? _guide;
    private double _bestValue;

    internal RootSearch(CompiledSituation compiled, WorkMeter meter, bool searchExactly)
    {
        _compiled = compiled;
        _meter = meter;
        _searchExactly = searchExactly;
        _board = new Board(compiled, meter);
        _lookahead = new Lookahead(_board);
    }

    internal Plan Run()
    {
        var start = _board.Start;
        var repairsOnly = _board.Policy.Cost(start.Weights, start.Mass, start.State, _board.Tried, _trace);
        repairsOnly = _trace.Count == 0 ? _compiled.SpecialistCost : Math.Min(repairsOnly, _compiled.SpecialistCost);
        List(start);
        LookOnce(start);
        CreditRepairsOnly(start, repairsOnly);
        var isExact = Deepen(start);
        return Result(repairsOnly, isExact);
    }

    private void List(Position start)
    {
        for (var c = 0; c < _compiled.Checks.Length; c++)
        {
            start.State.AfterCheck(c, out var cost);
            Add(StepKind.Check, c, _compiled.Checks[c].Index, cost, !_compiled.Checks[c].IsWorthPlanning);
        }

        for (var r = 0; r < _compiled.Repairs.Length; r++)
        {
            if (start.State.IsReady(_compiled.Repairs[r]))
            {
                Add(StepKind.Repair, r, _compiled.Repairs[r].Index, start.State.RepairCosts[r], !_compiled.Repairs[r].IsWorthPlanning);
            }
        }

        Add(StepKind.Specialist, 0, 0, _compiled.SpecialistCost, isIdle: false);
        _steps[^1].Settle(_compiled.SpecialistCost, 1);
    }

    private void Add(StepKind kind, int compiled, int index, double cost, bool isIdle) =>
        _steps.Add(new RootStep { Kind = kind, Compiled = compiled, Index = index, Cost = cost, IsIdle = isIdle });

    /// <summary>One step ahead for everything, whatever the budget.</summary>
    private void LookOnce(Position start)
    {
        var limit = _meter.Limit;
        _meter.Limit = long.MinValue;
        _lookahead.Restart(FirstLook * _compiled.SpecialistCost, 1);
        foreach (var step in _steps.Where(s => !s.IsExact))
        {
            Follow(start, step);
        }

        _meter.Limit = limit;
    }

    /// <summary>Whatever is done first, the best plan known can be followed after it.</summary>
    private void Reconcile(Position start)
    {
        if (_best is not { } guide)
        {
            return;
        }

        foreach (var step in _steps.Where(s => !s.IsExact))
        {
            step.Improve(
                step.Kind == StepKind.Check ? _lookahead.CheckThen(start, step.Compiled, guide) : _lookahead.RepairThen(start, step.Compiled, guide),
                step.Depth);
        }
    }

    /// <summary>Repairs without further checks are a plan as well, of the step that they begin with.</summary>
    private void CreditRepairsOnly(Position start, double repairsOnly)
    {
        if (_trace.Count == 0)
        {
            return;
        }

        var first = _compiled.Repairs[_trace[0].Repair];
        var gate = Array.Find(first.Gates, g => !start.State.Contents.Contains(g));
        var (kind, compiled) = start.State.IsReady(first)
            ? (StepKind.Repair, _trace[0].Repair)
            : (StepKind.Check, _compiled.CheckOfGate[gate - _compiled.AccessCount]);
        _steps.Find(s => s.Kind == kind && s.Compiled == compiled)!.Improve(repairsOnly, 1);
    }

    /// <summary>Whether the best step is proven to be the best.</summary>
    private bool Deepen(Position start)
    {
        var (tolerance, width) = (FirstTolerance * Best().Total, 1);
        for (var round = 0; round < MostRounds && !_meter.IsExhausted; round++)
        {
            // Good plans in hand first: they cut most of the exact search short.
            if (round == RoundsBeforeExact && _searchExactly && IsWithinReach() && SolveExactly(start))
            {
                return true;
            }

            var before = _meter.Spent;
            Deepen(start, tolerance, width, CandidatesOf(round));
            tolerance = Next(tolerance, (double)(_meter.Spent - before) / CandidatesOf(round) * CandidatesOf(round + 1));
            if (tolerance < CloseEnough * Best().Total)
            {
                (tolerance, width) = (FirstTolerance * Best().Total, width + 1);
            }
        }

        Reconcile(start);
        var best = Best();
        var isExact = best.Total <= start.Floor + (_compiled.SpecialistCost * 1e-13);
        if (isExact)
        {
            best.Settle(best.Total, best.Depth);
        }

        return isExact;
    }

    private static int CandidatesOf(int round) => Candidates[Math.Min(round, Candidates.Length - 1)];

    /// <summary>A closer tolerance that the work left is likely to suffice for; the work grows about as the tolerance falls.</summary>
    private double Next(double tolerance, double work)
    {
        var left = Math.Max(1.0, _meter.Limit - _meter.Spent);
        return tolerance * Math.Max(Closer, Math.Min(0.7, work / left));
    }

    private void Deepen(Position start, double tolerance, int width, int count)
    {
        var limit = _meter.Limit;
        var steps = Chosen(start, count);
        _lookahead.Restart(tolerance, width);
        for (var i = 0; i < steps.Count && !_meter.IsExhausted; i++)
        {
            // What one step leaves over goes to the next.
            _meter.Limit = _meter.Spent + ((limit - _meter.Spent) / (steps.Count - i));
            _guide = _best;
            Follow(start, steps[i]);
            _meter.Limit = limit;
        }
    }

    /// <summary>The first steps to follow up: those with the best plans known; in the first round also those that tell most per cost.</summary>
    private List<RootStep> Chosen(Position start, int count)
    {
        var able = _steps.Where(s => s.Kind != StepKind.Specialist && !s.IsIdle);
        if (count < Candidates[0])
        {
            return [.. able.OrderBy(s => s.Total).Take(count)];
        }

        var telling = _lookahead.Telling(start, count / 2);
        return [.. able.OrderBy(s => !telling.Contains(s.Kind == StepKind.Check ? s.Compiled : ~s.Compiled)).ThenBy(s => s.Total).Take(count)];
    }

    private void Follow(Position start, RootStep step)
    {
        _lookahead.Deepest = 1;
        PlanVector? plan = null;
        if (step.Kind == StepKind.Check)
        {
            step.Improve(_lookahead.Check(start, step.Compiled, _guide, double.PositiveInfinity, 1, out plan), _lookahead.Deepest);
        }
        else if (step.Kind == StepKind.Repair)
        {
            step.Improve(_lookahead.Repair(start, step.Compiled, _guide, 1, out plan), _lookahead.Deepest);
        }

        if (plan is not null)
        {
            Keep(start, plan);
        }
    }

    private void Keep(Position start, PlanVector plan)
    {
        var value = Weights.Dot(start.Weights, plan.Costs);
        if (_best is null || value < _bestValue)
        {
            (_best, _bestValue) = (plan, value);
        }
    }

    /// <summary>
    /// Whether the number of positions, every answer had or not, every repair tried or not, leaves some hope that the work will do.
    /// Bounds cut off most of them, so the guess is generous.
    /// </summary>
    private bool IsWithinReach()
    {
        var positions = 1.0;
        foreach (var check in _compiled.Checks.Where(c => c.IsWorthPlanning))
        {
            positions *= check.Outcomes.Length + 1;
        }

        foreach (var repair in _compiled.Repairs.Where(r => r.IsWorthPlanning))
        {
            positions *= 2;
        }

        return positions * WorkOfAPosition <= _meter.Limit - _meter.Spent;
    }

    private bool SolveExactly(Position start)
    {
        var limit = _meter.Limit;
        _meter.Limit = _meter.Spent + ((limit - _meter.Spent) * 2 / 3);
        var exact = new ExactSearch(_board);
        var slack = _compiled.SpecialistCost * 1e-12;
        var least = exact.Solve(start, Best().Total + slack, 1);
        var solved = !exact.GaveUp;
        RootStep[] steps = [.. _steps.Where(s => s.Kind != StepKind.Specialist).OrderBy(s => s.Total)];
        // The best step first, against a limit that turns all others down quickly; then what each of those costs.
        foreach (var step in steps)
        {
            Settle(start, step, exact, least + slack);
        }

        foreach (var step in steps.Where(s => !s.IsExact))
        {
            Settle(start, step, exact, double.PositiveInfinity);
        }

        _meter.Limit = limit;
        return solved && Best().IsExact;
    }

    private static void Settle(Position start, RootStep step, ExactSearch exact, double limit)
    {
        if (exact.GaveUp)
        {
            return;
        }

        var total = step.Kind == StepKind.Check
            ? exact.Check(start, step.Compiled, limit, 1)
            : exact.Repair(start, step.Compiled, limit, 1);
        if (!exact.GaveUp && total < limit)
        {
            step.Settle(total, exact.Deepest);
        }
    }

    private RootStep Best() => _steps.MinBy(s => s.Total)!;

    private Plan Result(double repairsOnly, bool isExact)
    {
        var best = Best().Total;
        var dearest = _steps.Max(s => s.Total);
        // Totals that differ by rounding only are the same, so that the order does not hang on the last digit.
        var unit = dearest > 0 ? dearest * 1e-12 : 1;
        NextStep[] steps = [.. _steps.OrderBy(s => Math.Round((s.Total - best) / unit)).ThenBy(s => s.IsIdle).ThenBy(s => s.Kind).ThenBy(s => s.Index).Select(ToNextStep)];
        return new Plan
        {
            ExpectedCost = best,
            Steps = steps,
            IsExact = isExact,
            Depth = steps[0].Depth,
            RepairsOnlyCost = repairsOnly,
            Repairs = [.. _trace.Select(t => new PlannedRepair(_compiled.Repairs[t.Repair].Index, t.Cost, t.Reached, t.Cured))],
            Work = _meter.Spent,
        };
    }

    private static NextStep ToNextStep(RootStep step) => new()
    {
        Kind = step.Kind,
        Index = step.Index,
        Cost = step.Cost,
        CostAfter = Math.Max(0, step.Total - step.Cost),
        Depth = step.Depth,
        IsExact = step.IsExact,
        IsIdle = step.IsIdle,
    };
}
