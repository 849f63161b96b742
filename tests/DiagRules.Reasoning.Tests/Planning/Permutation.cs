using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

/// <summary>A situation with causes, accesses, checks and repairs in another order.</summary>
internal sealed class Permutation
{
    private readonly Situation _situation;
    private readonly int[] _causes;
    private readonly int[] _accesses;
    private readonly int[] _checks;
    private readonly int[] _repairs;

    internal Permutation(Situation situation, Random random)
    {
        _situation = situation;
        _causes = Shuffled(situation.Probabilities.Count, random);
        _accesses = Shuffled(situation.Accesses.Count, random);
        _checks = Shuffled(situation.Checks.Count, random);
        _repairs = Shuffled(situation.Repairs.Count, random);
    }

    internal (StepKind Kind, int Index) Renamed((StepKind Kind, int Index) step) => step.Kind switch
    {
        StepKind.Check => (step.Kind, _checks[step.Index]),
        StepKind.Repair => (step.Kind, _repairs[step.Index]),
        _ => step,
    };

    internal Situation Apply() => _situation with
    {
        Probabilities = Reordered(_situation.Probabilities, _causes),
        Accesses = Reordered([.. _situation.Accesses.Select(a => a with { Needs = New(a.Needs, _accesses), Excludes = New(a.Excludes, _accesses) })], _accesses),
        Checks = Reordered([.. _situation.Checks.Select(Check)], _checks),
        Repairs = Reordered([.. _situation.Repairs.Select(Repair)], _repairs),
    };

    private PlanCheck Check(PlanCheck check) => check with
    {
        Needs = New(check.Needs, _accesses),
        Outcomes = [.. check.Outcomes.Select(o => o with { Likelihoods = Reordered(o.Likelihoods, _causes), MakesPointless = New(o.MakesPointless, _checks) })],
    };

    private PlanRepair Repair(PlanRepair repair) => repair with
    {
        Needs = New(repair.Needs, _accesses),
        After = New(repair.After, _checks),
        Cures = [.. repair.Cures.Select(c => c with { Cause = _causes[c.Cause] })],
    };

    private static int[] New(IReadOnlyList<int> indices, int[] map) => [.. indices.Select(i => map[i])];

    private static T[] Reordered<T>(IReadOnlyList<T> items, int[] map)
    {
        var result = new T[items.Count];
        for (var i = 0; i < items.Count; i++)
        {
            result[map[i]] = items[i];
        }

        return result;
    }

    private static int[] Shuffled(int count, Random random)
    {
        int[] order = [.. Enumerable.Range(0, count)];
        random.Shuffle(order);
        return order;
    }
}
