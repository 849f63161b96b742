namespace DiagRules.Reasoning.Planning.Search;

/// <summary>The place in the tree of plans where a search stands: what was tried, what is pointless; and what both searches share.</summary>
internal sealed class Board
{
    private readonly List<double[]> _buffers = [];
    private readonly UInt128[][] _outcomeKeys;
    private readonly UInt128[] _repairKeys;
    private readonly Bits _closed;
    private readonly Bits _tried;

    internal Board(CompiledSituation compiled, WorkMeter meter)
    {
        Compiled = compiled;
        Meter = meter;
        States = new OpenStates(compiled, meter);
        Policy = new RepairPolicy(compiled, States, meter);
        Tried = new bool[compiled.Repairs.Length];
        Closed = new int[compiled.Checks.Length];
        Answers = new int[compiled.Checks.Length];
        Array.Fill(Answers, -1);
        _closed = Bits.Empty(Closed.Length);
        _tried = Bits.Empty(Tried.Length);
        var keys = new PositionKeys();
        _outcomeKeys = [.. compiled.Checks.Select(c => keys.Next(c.Outcomes.Length))];
        _repairKeys = keys.Next(compiled.Repairs.Length);
    }

    internal CompiledSituation Compiled { get; }

    internal WorkMeter Meter { get; }

    internal OpenStates States { get; }

    internal RepairPolicy Policy { get; }

    /// <summary>Repairs that were tried on the way here.</summary>
    internal bool[] Tried { get; }

    /// <summary>How many reasons there are not to do a check: done, or made pointless by an answer.</summary>
    internal int[] Closed { get; }

    /// <summary>The answer each check gave on the way here; -1 when it was not done.</summary>
    internal int[] Answers { get; }

    internal Position Start => new(Compiled.Prior, Weights.Sum(Compiled.Prior), States.Start, UInt128.Zero);

    internal bool IsPlannable(int check) => Closed[check] == 0 && Compiled.Checks[check].IsWorthPlanning;

    /// <summary>Whether a plan can be followed from here as it stands.</summary>
    internal bool CanFollow(PlanVector plan, OpenState state) =>
        !plan.Checks.Overlaps(_closed) && !plan.Repairs.Overlaps(_tried) && OpenStates.IsOpenEnough(plan.Start, state);

    /// <summary>Moves to what one answer of a check leaves, writing its weights into the buffer of the given depth. <see cref="LeaveOutcome"/> moves back.</summary>
    internal Position EnterOutcome(in Position from, int check, int outcome, OpenState opened, int depth)
    {
        var compiled = Compiled.Checks[check].Outcomes[outcome];
        Answers[check] = outcome;
        Close(check, 1);
        foreach (var other in compiled.Pointless)
        {
            Close(other, 1);
        }

        var weights = Buffer(depth);
        var mass = Weights.Multiply(from.Weights, compiled.Likelihood, weights);
        return new Position(weights, mass, opened.AfterOutcome(compiled), from.Key ^ _outcomeKeys[check][outcome]);
    }

    internal void LeaveOutcome(int check, int outcome)
    {
        Answers[check] = -1;
        Close(check, -1);
        foreach (var other in Compiled.Checks[check].Outcomes[outcome].Pointless)
        {
            Close(other, -1);
        }
    }

    /// <summary>Moves to what a repair in vain leaves. <see cref="LeaveRepair"/> moves back.</summary>
    internal Position EnterRepair(in Position from, int repair, int depth)
    {
        Tried[repair] = true;
        _tried.Set(repair, true);
        var weights = Buffer(depth);
        var mass = Weights.Multiply(from.Weights, Compiled.Repairs[repair].Keeps, weights);
        return new Position(weights, mass, from.State.AfterRepair(repair), from.Key ^ _repairKeys[repair]);
    }

    internal void LeaveRepair(int repair)
    {
        Tried[repair] = false;
        _tried.Set(repair, false);
    }

    internal double PolicyCost(in Position at) => at.Mass > 0 ? Policy.Cost(at.Weights, at.Mass, at.State, Tried) : 0;

    private void Close(int check, int reasons)
    {
        Closed[check] += reasons;
        _closed.Set(check, Closed[check] > 0);
    }

    private double[] Buffer(int depth)
    {
        while (_buffers.Count <= depth)
        {
            _buffers.Add(new double[Compiled.Width]);
        }

        return _buffers[depth];
    }
}
