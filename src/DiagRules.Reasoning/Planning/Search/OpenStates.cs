namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Makes and keeps the states of access that a search comes by.</summary>
internal sealed class OpenStates
{
    private const int WorkOfMakingOne = 1_000;

    private readonly Dictionary<Bits, OpenState> _states = [];
    private readonly WorkMeter _meter;

    internal OpenStates(CompiledSituation compiled, WorkMeter meter)
    {
        Compiled = compiled;
        _meter = meter;
        Masks = MaskCosts.Applies(compiled) ? new MaskCosts(compiled) : null;
        Costs = Masks ?? (StepCosts)new SequencedCosts(compiled);
        Floors = new CostFloors(compiled);
        Start = Find(compiled.OpenAtStart());
    }

    internal CompiledSituation Compiled { get; }

    internal StepCosts Costs { get; }

    /// <summary>The same as <see cref="Costs"/> where nothing closes again; else null.</summary>
    internal MaskCosts? Masks { get; }

    internal CostFloors Floors { get; }

    internal OpenState Start { get; }

    /// <summary>
    /// Whether a plan that reckons with one state costs at most what it says in another. With more open it does: whoever follows its openings one by
    /// one and leaves out those that are open already never has less open than it reckons with.
    /// </summary>
    internal static bool IsOpenEnough(OpenState reckoned, OpenState actual) =>
        ReferenceEquals(reckoned, actual) || reckoned.Contents.IsWithin(actual.Contents);

    internal OpenState Find(Bits contents)
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
