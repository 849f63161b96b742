namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Ends a plan with the base policy: repairs alone, then the specialist.</summary>
internal sealed class RepairEndings(Board board)
{
    private readonly List<RepairTrace> _trace = [];
    private readonly Dictionary<int, PlanVector> _none = [];
    private readonly double[] _left = new double[board.Compiled.Width];

    /// <summary>A plan for where nobody comes.</summary>
    internal PlanVector None(OpenState state) => _none.TryGetValue(state.Id, out var none) ? none : _none[state.Id] = PlanVector.Specialist(board.Compiled, state);

    /// <summary>The base policy from a position: its plan when that is wanted, and what it costs.</summary>
    internal PlanVector? Best(in Position at, bool isWanted, out double value)
    {
        _trace.Clear();
        value = board.Policy.Cost(at.Weights, at.Mass, at.State, board.Tried, isWanted ? _trace : null);
        board.Meter.Spend(_trace.Count * board.Compiled.Width / 8);
        return isWanted ? PlanVector.Sequence(board.Compiled, at.State, [.. _trace.Select(step => step.Repair)]) : null;
    }

    /// <summary>The repairs of an ending that have not been tried yet, in its order: the plan when it is wanted, and what it costs.</summary>
    internal PlanVector? Rest(PlanVector ending, in Position at, bool isWanted, out double value)
    {
        int[]? order = isWanted ? [.. ending.Order.Where(repair => !board.Tried[repair])] : null;
        if (order is not null)
        {
            var plan = PlanVector.Sequence(board.Compiled, at.State, order);
            value = Weights.Dot(at.Weights, plan.Costs);
            return plan;
        }

        value = CostOfRest(ending.Order, at);
        return null;
    }

    private double CostOfRest(int[] order, in Position at)
    {
        at.Weights.CopyTo(_left, 0);
        var (value, mass, state) = (0.0, at.Mass, at.State);
        foreach (var repair in order)
        {
            if (board.Tried[repair])
            {
                continue;
            }

            value += state.RepairCosts[repair] * mass;
            state = state.AfterRepair(repair);
            foreach (var cure in board.Compiled.Repairs[repair].Cures)
            {
                var gone = _left[cure.Cause] * cure.Probability;
                _left[cure.Cause] -= gone;
                mass -= gone;
            }
        }

        board.Meter.Spend(order.Length * 3);
        return value + (Math.Max(0, mass) * board.Compiled.SpecialistCost);
    }
}
