namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Settles the first steps by exact search.</summary>
internal sealed class RootExact(Board board, List<RootStep> steps)
{
    /// <summary>What a position of the exact search costs on average, bounds considered.</summary>
    private const double WorkOfAPosition = 20;

    /// <summary>
    /// Whether the number of positions, every answer had or not, every repair tried or not, leaves some hope that the work will do.
    /// Bounds cut off most of them, so the guess is generous.
    /// </summary>
    private bool IsWithinReach(long work)
    {
        var positions = 1.0;
        foreach (var check in board.Compiled.Checks.Where(c => c.IsWorthPlanning))
        {
            positions *= check.Outcomes.Length + 1;
        }

        foreach (var repair in board.Compiled.Repairs.Where(r => r.IsWorthPlanning))
        {
            positions *= 2;
        }

        return positions * WorkOfAPosition <= work;
    }

    /// <summary>Tries to find the best plan of all with two thirds of the work up to a limit; whether it did.</summary>
    internal bool TrySolve(long most)
    {
        if (!IsWithinReach(most - board.Meter.Spent))
        {
            return false;
        }

        var start = board.Start;
        var limit = board.Meter.Limit;
        board.Meter.Limit = board.Meter.Spent + ((most - board.Meter.Spent) * 2 / 3);
        var exact = new ExactSearch(board);
        var slack = board.Compiled.SpecialistCost * 1e-12;
        var least = exact.Solve(start, steps.MinBy(s => s.Total)!.Total + slack, 1);
        var solved = !exact.GaveUp;
        RootStep[] open = [.. steps.Where(s => s.Kind != StepKind.Specialist).OrderBy(s => s.Total)];
        // The best step first, against a limit that turns all others down quickly; then what each of those costs.
        foreach (var step in open)
        {
            Settle(start, step, exact, least + slack);
        }

        foreach (var step in open.Where(s => !s.IsExact))
        {
            Settle(start, step, exact, double.PositiveInfinity);
        }

        board.Meter.Limit = limit;
        return solved && steps.MinBy(s => s.Total)!.IsExact;
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
}
