namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Works out every first step: a look at each, then the promising ones deeper and deeper, exactly where that is within reach.</summary>
internal sealed class RootSearch
{
    /// <summary>
    /// What the passes of the lookahead leave unsaved at a node (a share of the expected cost), whether they branch out, and how many first steps
    /// they follow up. Deep and narrow comes first: following good plans to their end gains more than choosing among many cut short.
    /// </summary>
    private static readonly (double Tolerance, double Breadth, int Steps)[] Passes =
        [(0.04, 0, 8), (0.005, 0, 4), (0.0015, 0.5, 4), (0.0005, 0.5, 4), (0.00015, 0.5, 4)];

    private const int PassesBeforeExact = 2;

    /// <summary>What a position of the exact search costs on average, bounds considered.</summary>
    private const double WorkOfAPosition = 20;

    private readonly CompiledSituation _compiled;
    private readonly WorkMeter _meter;
    private readonly Board _board;
    private readonly Lookahead _lookahead;
    private readonly bool _searchExactly;
    private readonly List<RepairTrace> _trace = [];
    private readonly List<RootStep> _steps = [];

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
        _lookahead.Prepare(start);
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
        _lookahead.Restart(0, 0);
        foreach (var step in _steps.Where(s => !s.IsExact))
        {
            Follow(start, step);
        }

        _meter.Limit = limit;
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
        var isDeeper = false;
        for (var pass = 0; pass < Passes.Length && !_meter.IsExhausted; pass++)
        {
            // Good plans in hand first: they cut most of the exact search short.
            if (pass == PassesBeforeExact && _searchExactly && IsWithinReach() && SolveExactly(start))
            {
                return true;
            }

            Deepen(start, Passes[pass]);
            isDeeper = true;
        }

        if (isDeeper)
        {
            // Steps that were not followed up get the benefit of the plans found meanwhile.
            LookOnce(start);
        }

        var best = Best();
        var isExact = best.Total <= start.Floor + (_compiled.SpecialistCost * 1e-13);
        if (isExact)
        {
            best.Settle(best.Total, best.Depth);
        }

        return isExact;
    }

    private void Deepen(Position start, (double Tolerance, double Breadth, int Steps) pass)
    {
        _lookahead.Restart(pass.Tolerance * Best().Total, pass.Breadth);
        foreach (var step in _steps.Where(s => s.Kind != StepKind.Specialist && !s.IsIdle).OrderBy(s => s.Total).Take(pass.Steps).ToList())
        {
            Follow(start, step);
        }
    }

    private void Follow(Position start, RootStep step)
    {
        _lookahead.Deepest = 1;
        if (step.Kind == StepKind.Check)
        {
            step.Improve(_lookahead.Check(start, step.Compiled, double.PositiveInfinity, 1, out _), _lookahead.Deepest);
        }
        else if (step.Kind == StepKind.Repair)
        {
            step.Improve(_lookahead.Repair(start, step.Compiled, 1, out _), _lookahead.Deepest);
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
