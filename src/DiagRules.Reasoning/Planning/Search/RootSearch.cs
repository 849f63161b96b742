namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Works out every first step: by lookahead, exactly where that is within reach.</summary>
internal sealed class RootSearch
{
    private readonly CompiledSituation _compiled;
    private readonly WorkMeter _meter;
    private readonly Board _board;
    private readonly bool _searchExactly;
    private readonly List<RepairTrace> _trace = [];
    private readonly List<RootStep> _steps = [];

    internal RootSearch(CompiledSituation compiled, WorkMeter meter, bool searchExactly)
    {
        _compiled = compiled;
        _meter = meter;
        _searchExactly = searchExactly;
        _board = new Board(compiled, meter);
    }

    internal Plan Run()
    {
        var start = _board.Start;
        var repairsOnly = _board.Policy.Cost(start.Weights, start.Mass, start.State, _board.Tried, _trace);
        repairsOnly = _trace.Count == 0 ? _compiled.SpecialistCost : Math.Min(repairsOnly, _compiled.SpecialistCost);
        List(start);
        var rounds = new RootRounds(_board, _steps);
        rounds.LookOnce();
        CreditRepairsOnly(start, repairsOnly);
        return Result(repairsOnly, rounds.Run(Exact()) || IsAsGoodAsCanBe(start));
    }

    private RootExact? Exact() => _searchExactly ? new RootExact(_board, _steps) : null;

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

    /// <summary>Whether the best plan costs no more than it would if one knew what is wrong.</summary>
    private bool IsAsGoodAsCanBe(Position start)
    {
        var best = _steps.MinBy(s => s.Total)!;
        if (best.Total > start.Floor + (_compiled.SpecialistCost * 1e-13))
        {
            return false;
        }

        best.Settle(best.Total, best.Depth);
        return true;
    }

    private Plan Result(double repairsOnly, bool isExact)
    {
        var best = _steps.Min(s => s.Total);
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
