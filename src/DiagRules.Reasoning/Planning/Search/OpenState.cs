namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// What is open and which checks that repairs wait for are done, with what every step costs from here. One instance for equal contents.
/// </summary>
internal sealed class OpenState
{
    private readonly OpenStates _states;
    private readonly double[] _checkCosts;
    private readonly OpenState?[] _afterCheck;
    private readonly OpenState?[] _afterRepair;
    private double[]? _floor;

    internal OpenState(OpenStates states, Bits contents, int id)
    {
        _states = states;
        Contents = contents;
        Id = id;
        _checkCosts = new double[states.Compiled.Checks.Length];
        _afterCheck = new OpenState?[_checkCosts.Length];
        _afterRepair = new OpenState?[states.Compiled.Repairs.Length];
        RepairCosts = new double[_afterRepair.Length];
        Missing = new ulong[states.Masks is null ? 0 : _afterRepair.Length];
        for (var r = 0; r < Missing.Length; r++)
        {
            Missing[r] = states.Masks!.Missing(r, contents);
        }

        for (var r = 0; r < RepairCosts.Length; r++)
        {
            states.Costs.AfterRepair(contents, r, out RepairCosts[r]);
        }
    }

    internal Bits Contents { get; }

    internal int Id { get; }

    /// <summary>Per repair what it costs; see <see cref="StepCosts.AfterRepair"/>.</summary>
    internal double[] RepairCosts { get; }

    /// <summary>Per repair what is to be opened for it, where <see cref="OpenStates.Masks"/> apply; else empty.</summary>
    internal ulong[] Missing { get; }

    /// <summary>Per hypothesis a cost that no plan can stay below when this is what is wrong.</summary>
    internal double[] Floor => _floor ??= _states.Floors.Compute(_states.Costs, Contents);

    /// <summary>A check with its access opened.</summary>
    internal OpenState AfterCheck(int check, out double cost)
    {
        var next = _afterCheck[check] ??= _states.Find(_states.Costs.AfterCheck(Contents, check, out _checkCosts[check]));
        cost = _checkCosts[check];
        return next;
    }

    /// <summary>After one answer of a check that was done.</summary>
    internal OpenState AfterOutcome(CompiledOutcome outcome)
    {
        if (outcome.Gates.Length == 0)
        {
            return this;
        }

        var contents = Contents;
        foreach (var gate in outcome.Gates)
        {
            contents = contents.With(gate);
        }

        return _states.Find(contents);
    }

    internal OpenState AfterRepair(int repair) => _afterRepair[repair] ??= _states.Find(_states.Costs.AfterRepair(Contents, repair, out _));

    internal bool IsReady(CompiledRepair repair)
    {
        foreach (var gate in repair.Gates)
        {
            if (!Contents.Contains(gate))
            {
                return false;
            }
        }

        return true;
    }
}
