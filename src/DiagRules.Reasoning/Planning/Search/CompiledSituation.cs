namespace DiagRules.Reasoning.Planning.Search;

/// <summary>A situation made ready for searching: impossible hypotheses, answers and steps are gone, probabilities are normalised.</summary>
/// <remarks>
/// Throughout the search beliefs are unnormalised weights, so that the expected cost of a plan is linear in them and a branch needs no division:
/// <c>V(w) = min(specialist * |w|, cost * |w| + sum over answers of V(w * likelihood), cost * |w| + V(w * (1 - cures)))</c>.
/// </remarks>
internal sealed class CompiledSituation
{
    private readonly Situation _situation;
    private readonly int[] _hypotheses;
    private readonly Dictionary<int, int> _gateOfCheck = [];

    internal CompiledSituation(Situation situation)
    {
        _situation = situation;
        double[] prior = [.. situation.Probabilities, situation.Unlisted];
        _hypotheses = [.. Enumerable.Range(0, prior.Length).Where(h => prior[h] > 0)];
        Width = Weights.Padded(_hypotheses.Length);
        Prior = new double[Width];
        var sum = prior.Sum();
        for (var i = 0; i < _hypotheses.Length; i++)
        {
            Prior[i] = prior[_hypotheses[i]] / sum;
        }

        NumberGates();
        Repairs = [.. Offered(situation.Repairs.Select(r => r.State)).Select(Compile)];
        var gatesThatMatter = Repairs.Where(r => r.IsWorthPlanning).SelectMany(r => r.Gates).ToHashSet();
        int[] offered = [.. Offered(situation.Checks.Select(c => c.State))];
        Checks = [.. offered.Select(c => Compile(c, offered, gatesThatMatter))];
        CheckOfGate = [.. _gateOfCheck.Keys.Select(c => Array.IndexOf(offered, c))];
        RepairsOf = [.. Enumerable.Range(0, Width).Select(h => CuresOf(h))];
        RepairGroups = [.. Enumerable.Range(0, Repairs.Length).Where(r => Repairs[r].IsWorthPlanning)
            .GroupBy(r => string.Join(',', Repairs[r].Needs.Order()) + ';' + string.Join(',', Repairs[r].Gates))
            .Where(g => g.Count() > 1).Select(g => g.ToArray())];
        CheckGroups = [.. Enumerable.Range(0, Checks.Length).Where(c => Checks[c].IsWorthPlanning && Checks[c].Needs.Length > 0)
            .GroupBy(c => string.Join(',', Checks[c].Needs.Order())).Select(g => g.ToArray())];
        Openings = new AccessOpening(situation.Accesses);
        GatesThatMayFall = [.. Checks.SelectMany(c => c.Outcomes).SelectMany(o => o.Gates)];
    }

    /// <summary>Length of every array over hypotheses: how many are possible, padded.</summary>
    internal int Width { get; }

    internal int HypothesisCount => _hypotheses.Length;

    internal double[] Prior { get; }

    internal double SpecialistCost => _situation.SpecialistCost;

    internal CompiledCheck[] Checks { get; }

    internal CompiledRepair[] Repairs { get; }

    /// <summary>Per hypothesis what may cure it; <see cref="Cure.Cause"/> is the repair here.</summary>
    internal Cure[][] RepairsOf { get; }

    /// <summary>Repairs that need the same accesses and come after the same checks, where there are several.</summary>
    internal int[][] RepairGroups { get; }

    /// <summary>Checks by the accesses that they need.</summary>
    internal int[][] CheckGroups { get; }

    internal AccessOpening Openings { get; }

    internal int AccessCount => _situation.Accesses.Count;

    /// <summary>The compiled check behind each gate, or -1 when it is withheld.</summary>
    internal int[] CheckOfGate { get; }

    /// <summary>Gates that some answer makes pointless.</summary>
    internal HashSet<int> GatesThatMayFall { get; }

    internal bool StepsCostTheSameInAnyOrder => GatesThatMayFall.Count == 0 && !Openings.HasExclusions;

    internal Bits OpenAtStart()
    {
        var open = Bits.Empty(AccessCount + CheckOfGate.Length);
        for (var i = 0; i < AccessCount; i++)
        {
            open = _situation.Accesses[i].IsOpen ? open.With(i) : open;
        }

        return open;
    }

    private static IEnumerable<int> Offered(IEnumerable<StepState> states) =>
        states.Select((state, index) => (state, index)).Where(s => s.state == StepState.Offered).Select(s => s.index);

    /// <summary>A gate is a check, not done yet, that an offered repair comes after. Its bits follow those of the accesses.</summary>
    private void NumberGates()
    {
        var gates = _situation.Repairs.Where(r => r.State == StepState.Offered).SelectMany(r => r.After)
            .Where(c => _situation.Checks[c].State != StepState.Done).Distinct().Order();
        foreach (var check in gates)
        {
            _gateOfCheck.Add(check, _situation.Accesses.Count + _gateOfCheck.Count);
        }
    }

    private CompiledRepair Compile(int index)
    {
        var repair = _situation.Repairs[index];
        var cures = repair.Cures.Where(c => c.Probability > 0).ToDictionary(c => c.Cause, c => c.Probability);
        Cure[] possible = [.. Enumerable.Range(0, _hypotheses.Length).Where(h => cures.ContainsKey(_hypotheses[h])).Select(h => new Cure(h, cures[_hypotheses[h]]))];
        var keeps = new double[Width];
        Array.Fill(keeps, 1, 0, _hypotheses.Length);
        foreach (var cure in possible)
        {
            keeps[cure.Cause] = 1 - cure.Probability;
        }

        int[] gates = [.. repair.After.Order().Where(_gateOfCheck.ContainsKey).Select(c => _gateOfCheck[c])];
        return new CompiledRepair(index, repair.Cost, [.. repair.Needs], gates, possible, keeps);
    }

    private CompiledCheck Compile(int index, int[] offered, HashSet<int> gatesThatMatter)
    {
        var check = _situation.Checks[index];
        var sums = new double[_hypotheses.Length];
        foreach (var outcome in check.Outcomes)
        {
            for (var h = 0; h < sums.Length; h++)
            {
                sums[h] += Likelihood(outcome, _hypotheses[h]);
            }
        }

        CompiledOutcome[] outcomes = [.. check.Outcomes.Select((o, i) => Compile(o, i, sums, offered)).Where(o => o.Likelihood.Any(p => p > 0))];
        var gate = _gateOfCheck.GetValueOrDefault(index, -1);
        var opensTheWay = gatesThatMatter.Contains(gate) || outcomes.Any(o => o.Gates.Any(gatesThatMatter.Contains));
        return new CompiledCheck(index, check.Cost, [.. check.Needs], gate, outcomes, opensTheWay || outcomes.Any(TellsApart));
    }

    private CompiledOutcome Compile(PlanOutcome outcome, int index, double[] sums, int[] offered)
    {
        var likelihood = new double[Width];
        for (var h = 0; h < sums.Length; h++)
        {
            likelihood[h] = Likelihood(outcome, _hypotheses[h]) / sums[h];
        }

        int[] pointless = [.. outcome.MakesPointless.Select(c => Array.IndexOf(offered, c)).Where(c => c >= 0)];
        int[] gates = [.. outcome.MakesPointless.Where(_gateOfCheck.ContainsKey).Select(c => _gateOfCheck[c])];
        return new CompiledOutcome(index, likelihood, pointless, gates);
    }

    /// <summary>Rounding of equal inputs must not make a check look informative.</summary>
    private bool TellsApart(CompiledOutcome outcome)
    {
        var likelihood = outcome.Likelihood.AsSpan(0, _hypotheses.Length);
        foreach (var p in likelihood)
        {
            if (Math.Abs(p - likelihood[0]) > 1e-12)
            {
                return true;
            }
        }

        return false;
    }

    private Cure[] CuresOf(int hypothesis) =>
        [.. Repairs.Select((r, i) => (r, i)).SelectMany(p => p.r.Cures.Where(c => c.Cause == hypothesis).Select(c => new Cure(p.i, c.Probability)))];

    private static double Likelihood(PlanOutcome outcome, int hypothesis) =>
        hypothesis < outcome.Likelihoods.Count ? outcome.Likelihoods[hypothesis] : outcome.Unlisted;
}
