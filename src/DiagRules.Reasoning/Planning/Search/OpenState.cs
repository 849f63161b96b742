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
    private double[]? _repairCosts;
    private double[]? _floor;

    internal OpenState(OpenStates states, Bits contents, int id)
    {
        _states = states;
        Contents = contents;
        Id = id;
        _checkCosts = new double[states.Compiled.Checks.Length];
        _afterCheck = new OpenState?[_checkCosts.Length];
        _afterRepair = new OpenState?[states.Compiled.Repairs.Length];
    }

    internal Bits Contents { get; }

    internal int Id { get; }

    /// <summary>
    /// Per repair what it costs with access opened and the checks it comes after done first, whatever their answers; infinite when one of these is withheld.
    /// </summary>
    internal double[] RepairCosts => _repairCosts ??= ComputeRepairCosts();

    /// <summary>Per hypothesis a cost that no plan can stay below when this is what is wrong.</summary>
    internal double[] Floor => _floor ??= _states.Floors.Compute(_states.Compiled.StepsCostTheSameInAnyOrder ? RepairCosts : _states.LeastRepairCosts(Contents));

    /// <summary>A check with its access opened.</summary>
    internal OpenState AfterCheck(int check, out double cost)
    {
        var next = _afterCheck[check] ??= _states.DoCheck(Contents, check, out _checkCosts[check]);
        cost = _checkCosts[check];
        return next;
    }

    /// <summary>After one answer of a check that was done.</summary>
    internal OpenState AfterOutcome(CompiledOutcome outcome) => outcome.Gates.Length == 0 ? this : _states.Mark(Contents, outcome.Gates);

    internal OpenState AfterRepair(int repair) => _afterRepair[repair] ??= _states.DoRepair(this, repair, out _);

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

    private double[] ComputeRepairCosts()
    {
        var costs = new double[_afterRepair.Length];
        for (var r = 0; r < costs.Length; r++)
        {
            _afterRepair[r] = _states.DoRepair(this, r, out costs[r]);
        }

        return costs;
    }
}
