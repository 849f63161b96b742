namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Renumbers a situation to what is possible and offered.</summary>
internal sealed class SituationCompiler
{
    private readonly Situation _situation;
    private readonly int _width;
    private readonly int[] _compiledCause;
    private readonly int[] _compiledCheck;
    private readonly int[] _compiledAccess;
    private readonly int[] _gateOfCheck;
    private readonly int[] _checks;

    internal SituationCompiler(Situation situation)
    {
        _situation = situation;
        var causes = situation.Probabilities.Count;
        Hypotheses = [.. Enumerable.Range(0, causes + 1).Where(h => Probability(h) > 0)];
        _width = Weights.Padded(Hypotheses.Length);
        _compiledCause = Inverse(Hypotheses, causes + 1);
        _checks = [.. Enumerable.Range(0, situation.Checks.Count).Where(c => situation.Checks[c].State == StepState.Offered)];
        _compiledCheck = Inverse(_checks, situation.Checks.Count);
        var accesses = AccessesThatMatter();
        _compiledAccess = Inverse(accesses, situation.Accesses.Count);
        Accesses = [.. accesses.Select(a => Renumbered(situation.Accesses[a]))];
        _gateOfCheck = Gates(out var checkOfGate);
        CheckOfGate = checkOfGate;
    }

    /// <summary>What is possible: causes, then something not listed.</summary>
    internal int[] Hypotheses { get; }

    internal PlanAccess[] Accesses { get; }

    internal int[] CheckOfGate { get; }

    internal double[] Prior()
    {
        var prior = new double[_width];
        for (var h = 0; h < Hypotheses.Length; h++)
        {
            prior[h] = Probability(Hypotheses[h]);
        }

        var sum = prior.Sum();
        for (var h = 0; h < Hypotheses.Length; h++)
        {
            prior[h] /= sum;
        }

        return prior;
    }

    internal CompiledRepair[] Repairs() =>
        [.. Enumerable.Range(0, _situation.Repairs.Count).Where(r => _situation.Repairs[r].State == StepState.Offered).Select(Compile)];

    internal CompiledCheck[] Checks(CompiledRepair[] repairs)
    {
        var gatesThatMatter = repairs.Where(r => r.IsWorthPlanning).SelectMany(r => r.Gates).ToHashSet();
        return [.. _checks.Select(c => Compile(c, gatesThatMatter))];
    }

    private double Probability(int hypothesis) =>
        hypothesis < _situation.Probabilities.Count ? _situation.Probabilities[hypothesis] : _situation.Unlisted;

    private static int[] Inverse(int[] kept, int count)
    {
        var inverse = new int[count];
        Array.Fill(inverse, -1);
        for (var i = 0; i < kept.Length; i++)
        {
            inverse[kept[i]] = i;
        }

        return inverse;
    }

    private int[] AccessesThatMatter()
    {
        var matters = new bool[_situation.Accesses.Count];
        var pending = new Stack<int>();
        foreach (var check in _checks)
        {
            Push(_situation.Checks[check].Needs);
        }

        foreach (var repair in _situation.Repairs.Where(r => r.State == StepState.Offered))
        {
            Push(repair.Needs);
        }

        while (pending.TryPop(out var access))
        {
            Push(_situation.Accesses[access].Needs);
        }

        return [.. Enumerable.Range(0, matters.Length).Where(a => matters[a])];

        void Push(IReadOnlyList<int> needs)
        {
            foreach (var need in needs.Where(n => !matters[n]))
            {
                matters[need] = true;
                pending.Push(need);
            }
        }
    }

    private PlanAccess Renumbered(PlanAccess access) => access with
    {
        Needs = [.. access.Needs.Select(n => _compiledAccess[n])],
        Excludes = [.. access.Excludes.Select(n => _compiledAccess[n]).Where(n => n >= 0)],
    };

    /// <summary>A gate is a check, not done yet, that an offered repair comes after. Its bits follow those of the accesses.</summary>
    private int[] Gates(out int[] checkOfGate)
    {
        int[] gates = [.. _situation.Repairs.Where(r => r.State == StepState.Offered).SelectMany(r => r.After)
            .Where(c => _situation.Checks[c].State != StepState.Done).Distinct().Order()];
        var gateOfCheck = new int[_situation.Checks.Count];
        Array.Fill(gateOfCheck, -1);
        for (var g = 0; g < gates.Length; g++)
        {
            gateOfCheck[gates[g]] = Accesses.Length + g;
        }

        checkOfGate = [.. gates.Select(c => _compiledCheck[c])];
        return gateOfCheck;
    }

    private CompiledRepair Compile(int index)
    {
        var repair = _situation.Repairs[index];
        var keeps = new double[_width];
        Array.Fill(keeps, 1, 0, Hypotheses.Length);
        var cures = new List<Cure>();
        foreach (var cure in repair.Cures.Where(c => c.Probability > 0 && _compiledCause[c.Cause] >= 0).OrderBy(c => c.Cause))
        {
            var cause = _compiledCause[cure.Cause];
            keeps[cause] = 1 - cure.Probability;
            cures.Add(new Cure(cause, cure.Probability));
        }

        int[] gates = [.. repair.After.Select(c => _gateOfCheck[c]).Where(g => g >= 0).Order()];
        return new CompiledRepair(index, repair.Cost, Needs(repair.Needs), gates, [.. cures], keeps);
    }

    private CompiledCheck Compile(int index, HashSet<int> gatesThatMatter)
    {
        var check = _situation.Checks[index];
        var rows = new double[check.Outcomes.Count][];
        var sums = new double[_width];
        for (var o = 0; o < rows.Length; o++)
        {
            rows[o] = Row(check.Outcomes[o]);
            for (var h = 0; h < sums.Length; h++)
            {
                sums[h] += rows[o][h];
            }
        }

        var outcomes = new List<CompiledOutcome>(rows.Length);
        var (tellsApart, opensTheWay) = (false, gatesThatMatter.Contains(_gateOfCheck[index]));
        for (var o = 0; o < rows.Length; o++)
        {
            var (isPossible, isInformative) = Normalise(rows[o], sums);
            if (isPossible)
            {
                outcomes.Add(Compile(check.Outcomes[o], o, rows[o]));
                tellsApart |= isInformative;
                opensTheWay |= Array.Exists(outcomes[^1].Gates, gatesThatMatter.Contains);
            }
        }

        return new CompiledCheck(index, check.Cost, Needs(check.Needs), _gateOfCheck[index], [.. outcomes], opensTheWay || tellsApart, Doubt(outcomes));
    }

    private double[] Doubt(List<CompiledOutcome> outcomes)
    {
        var doubt = new double[_width];
        foreach (var outcome in outcomes)
        {
            for (var h = 0; h < Hypotheses.Length; h++)
            {
                var likelihood = outcome.Likelihood[h];
                doubt[h] -= likelihood > 0 ? likelihood * Math.Log(likelihood) : 0;
            }
        }

        return doubt;
    }

    private double[] Row(PlanOutcome outcome)
    {
        var row = new double[_width];
        var causes = _situation.Probabilities.Count;
        for (var h = 0; h < Hypotheses.Length; h++)
        {
            row[h] = Hypotheses[h] < causes ? outcome.Likelihoods[Hypotheses[h]] : outcome.Unlisted;
        }

        return row;
    }

    /// <summary>Divides by the sums over the answers. Rounding of equal inputs must not make a check look informative.</summary>
    private (bool IsPossible, bool IsInformative) Normalise(double[] row, double[] sums)
    {
        var (isPossible, isInformative) = (false, false);
        for (var h = 0; h < Hypotheses.Length; h++)
        {
            row[h] /= sums[h];
            isPossible |= row[h] > 0;
            isInformative |= Math.Abs(row[h] - row[0]) > 1e-12;
        }

        return (isPossible, isInformative);
    }

    private CompiledOutcome Compile(PlanOutcome outcome, int index, double[] likelihood)
    {
        int[] pointless = [.. outcome.MakesPointless.Select(c => _compiledCheck[c]).Where(c => c >= 0)];
        int[] gates = [.. outcome.MakesPointless.Select(c => _gateOfCheck[c]).Where(g => g >= 0)];
        return new CompiledOutcome(index, likelihood, pointless, gates);
    }

    private int[] Needs(IReadOnlyList<int> needs) => [.. needs.Select(n => _compiledAccess[n])];
}
