namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Makes and keeps the states of access that a search comes by.</summary>
internal sealed class OpenStates
{
    private const int WorkOfMakingOne = 2_000;

    private readonly Dictionary<Bits, OpenState> _states = [];
    private readonly WorkMeter _meter;

    internal OpenStates(CompiledSituation compiled, WorkMeter meter)
    {
        Compiled = compiled;
        _meter = meter;
        Floors = new CostFloors(compiled);
        Start = Find(compiled.OpenAtStart());
    }

    internal CompiledSituation Compiled { get; }

    internal CostFloors Floors { get; }

    internal OpenState Start { get; }

    internal OpenState DoCheck(Bits contents, int check, out double cost)
    {
        var compiled = Compiled.Checks[check];
        // Validation has made sure that what a step needs can be open together.
        Compiled.Openings.TryOpen(contents, compiled.Needs, out var opening, out var after);
        cost = compiled.Cost + opening;
        return Find(compiled.Gate >= 0 ? after.With(compiled.Gate) : after);
    }

    internal OpenState DoRepair(OpenState state, int repair, out double cost)
    {
        var compiled = Compiled.Repairs[repair];
        cost = compiled.Cost;
        foreach (var gate in compiled.Gates)
        {
            var check = Compiled.CheckOfGate[gate - Compiled.AccessCount];
            if (state.Contents.Contains(gate))
            {
                continue;
            }

            if (check < 0)
            {
                cost = double.PositiveInfinity;
                return state;
            }

            state = state.AfterCheck(check, out var checkCost);
            cost += checkCost;
        }

        Compiled.Openings.TryOpen(state.Contents, compiled.Needs, out var opening, out var after);
        cost += opening;
        return Find(after);
    }

    /// <summary>Bounds what each repair costs from below, however its checks are ordered with others and whatever turns out pointless.</summary>
    internal double[] LeastRepairCosts(Bits contents)
    {
        var costs = new double[Compiled.Repairs.Length];
        for (var r = 0; r < costs.Length; r++)
        {
            var compiled = Compiled.Repairs[r];
            Compiled.Openings.TryOpen(contents, compiled.Needs, out var opening, out _);
            costs[r] = compiled.Cost + opening;
            foreach (var gate in compiled.Gates)
            {
                if (!contents.Contains(gate) && !Compiled.GatesThatMayFall.Contains(gate))
                {
                    var check = Compiled.CheckOfGate[gate - Compiled.AccessCount];
                    costs[r] += check < 0 ? double.PositiveInfinity : Compiled.Checks[check].Cost;
                }
            }
        }

        return costs;
    }

    internal OpenState Mark(Bits contents, int[] gates)
    {
        foreach (var gate in gates)
        {
            contents = contents.With(gate);
        }

        return Find(contents);
    }

    private OpenState Find(Bits contents)
    {
        if (!_states.TryGetValue(contents, out var state))
        {
            _meter.Spend(WorkOfMakingOne);
            state = new OpenState(this, contents, _states.Count);
            _states.Add(contents, state);
        }

        return state;
    }
}
