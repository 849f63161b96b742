namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// The base policy: repairs only, always the one with the best probability of cure per cost next, the specialist when going on costs more.
/// </summary>
/// <remarks>
/// Optimal when every repair cures causes of its own and no access is shared (Kadane and Simon 1977), stopping point included. Repairs behind one
/// closed access are weighed as a block: the access is charged against the best of the prefixes of what lies behind it.
/// Where repairs overlap and few matter, <see cref="RepairSubsets"/> finds the best order exactly.
/// </remarks>
internal sealed class RepairPolicy
{
    private const int WorkOfBeginning = 100;

    private readonly CompiledSituation _compiled;
    private readonly WorkMeter _meter;
    private readonly RepairSubsets? _subsets;
    private readonly RepairRun _run;

    internal RepairPolicy(CompiledSituation compiled, OpenStates states, WorkMeter meter)
    {
        _compiled = compiled;
        _meter = meter;
        _subsets = states.Masks is null ? null : new RepairSubsets(compiled, states.Masks, meter);
        _run = new RepairRun(compiled, states);
    }

    /// <summary>Expected cost on unnormalised weights.</summary>
    /// <param name="weights">Weights of the hypotheses.</param>
    /// <param name="mass">Their sum.</param>
    /// <param name="state">What is open.</param>
    /// <param name="tried">Repairs that are out of the running.</param>
    /// <param name="trace">Receives the sequence of repairs up to the best point for handing over, when given.</param>
    internal double Cost(ReadOnlySpan<double> weights, double mass, OpenState state, bool[] tried, List<RepairTrace>? trace = null)
    {
        Begin(weights, state, tried);
        return _subsets is not null && _subsets.Applies(_run.Active, weights, state.RepairCosts)
            ? _subsets.Cost(_run.Active, weights, mass, state, trace)
            : Greedy(mass, trace);
    }

    /// <summary>The rule of thumb alone, without the exact order where few repairs matter.</summary>
    internal double GreedyCost(ReadOnlySpan<double> weights, double mass, OpenState state, bool[] tried)
    {
        Begin(weights, state, tried);
        return Greedy(mass, null);
    }

    private void Begin(ReadOnlySpan<double> weights, OpenState state, bool[] tried)
    {
        _meter.Spend(WorkOfBeginning + _compiled.Width + (2 * tried.Length));
        _run.Begin(weights, state, tried);
    }

    private double Greedy(double mass, List<RepairTrace>? trace)
    {
        var specialist = _compiled.SpecialistCost;
        var negligible = mass * 1e-15;
        var (best, spent, kept) = (specialist * mass, 0.0, 0);
        while (_run.Active.Length > 0 && mass > negligible)
        {
            var chosen = _run.Choose();
            var cost = _run.CostOf(chosen);
            spent += cost * mass;
            if (spent >= best)
            {
                break;
            }

            var cured = Math.Min(mass, _run.CuredBy(chosen));
            trace?.Add(new RepairTrace(chosen, cost, mass, cured));
            _meter.Spend(20 + _run.Active.Length);
            _run.Try(chosen);
            mass -= cured;
            if (spent + (specialist * mass) < best)
            {
                best = spent + (specialist * mass);
                kept = trace?.Count ?? 0;
            }
        }

        trace?.RemoveRange(kept, trace.Count - kept);
        return best;
    }
}
