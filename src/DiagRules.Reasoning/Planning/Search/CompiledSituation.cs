namespace DiagRules.Reasoning.Planning.Search;

/// <summary>A situation made ready for searching: impossible hypotheses, answers and steps are gone, probabilities are normalised.</summary>
/// <remarks>
/// Throughout the search beliefs are unnormalised weights, so that the expected cost of a plan is linear in them and a branch needs no division:
/// <c>V(w) = min(specialist * |w|, cost * |w| + sum over answers of V(w * likelihood), cost * |w| + V(w * (1 - cures)))</c>.
/// </remarks>
internal sealed class CompiledSituation
{
    internal CompiledSituation(Situation situation)
    {
        var compiler = new SituationCompiler(situation);
        SpecialistCost = situation.SpecialistCost;
        HypothesisCount = compiler.Hypotheses.Length;
        Prior = compiler.Prior();
        Width = Prior.Length;
        Repairs = compiler.Repairs();
        Checks = compiler.Checks(Repairs);
        CheckOfGate = compiler.CheckOfGate;
        Accesses = compiler.Accesses;
        Openings = new AccessOpening(Accesses);
        GatesThatMayFall = [.. Checks.SelectMany(c => c.Outcomes).SelectMany(o => o.Gates)];
        RepairsOf = CuresByHypothesis();
        RepairGroups = [.. Groups(Repairs.Length, r => Repairs[r].IsWorthPlanning, r => [.. Repairs[r].Needs, .. Repairs[r].Gates]).Where(g => g.Length > 1)];
        CheckGroups = [.. Groups(Checks.Length, c => Checks[c].IsWorthPlanning && Checks[c].Needs.Length > 0, c => Checks[c].Needs).Where(g => g.Length > 1)];
    }

    internal double SpecialistCost { get; }

    /// <summary>How many hypotheses are possible.</summary>
    internal int HypothesisCount { get; }

    /// <summary>Length of every array over hypotheses: their number, padded.</summary>
    internal int Width { get; }

    internal double[] Prior { get; }

    internal CompiledCheck[] Checks { get; }

    internal CompiledRepair[] Repairs { get; }

    /// <summary>Per hypothesis what may cure it; <see cref="Cure.Cause"/> is the repair here.</summary>
    internal Cure[][] RepairsOf { get; }

    /// <summary>Repairs that need the same accesses and come after the same checks, where there are several.</summary>
    internal int[][] RepairGroups { get; }

    /// <summary>Checks that need the same accesses, where there are several.</summary>
    internal int[][] CheckGroups { get; }

    /// <summary>The accesses that some offered step needs, directly or through others; numbered anew.</summary>
    internal PlanAccess[] Accesses { get; }

    internal int AccessCount => Accesses.Length;

    internal AccessOpening Openings { get; }

    /// <summary>The compiled check behind each gate, or -1 when it is withheld.</summary>
    internal int[] CheckOfGate { get; }

    /// <summary>Gates that some answer makes pointless.</summary>
    internal HashSet<int> GatesThatMayFall { get; }

    internal Bits OpenAtStart()
    {
        var open = Bits.Empty(AccessCount + CheckOfGate.Length);
        for (var i = 0; i < AccessCount; i++)
        {
            open = Accesses[i].IsOpen ? open.With(i) : open;
        }

        return open;
    }

    private Cure[][] CuresByHypothesis()
    {
        var lists = new List<Cure>[HypothesisCount];
        for (var r = 0; r < Repairs.Length; r++)
        {
            foreach (var cure in Repairs[r].Cures)
            {
                (lists[cure.Cause] ??= []).Add(new Cure(r, cure.Probability));
            }
        }

        return [.. lists.Select(l => l is null ? Array.Empty<Cure>() : [.. l])];
    }

    private static IEnumerable<int[]> Groups(int count, Func<int, bool> isMember, Func<int, int[]> key) =>
        Enumerable.Range(0, count).Where(isMember).GroupBy(i => string.Join(',', key(i).Order())).Select(g => g.ToArray());
}
