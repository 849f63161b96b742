using CsCheck;
using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

/// <summary>Random situations: overlapping and unsure cures, accesses with prerequisites and exclusions, checks that must come first, impossible causes, free steps.</summary>
internal static class Situations
{
    /// <param name="Checks">The most checks.</param>
    /// <param name="Repairs">The most repairs.</param>
    /// <param name="Accesses">The most accesses.</param>
    /// <param name="Exclusions">Whether accesses may exclude each other.</param>
    internal sealed record Shape(int Causes, int Checks, int Repairs, int Accesses, bool Exclusions);

    internal static Shape Small { get; } = new(4, 3, 4, 3, Exclusions: true);

    internal static Gen<Situation> Of(Shape shape) =>
        from causes in Gen.Int[1, shape.Causes]
        from accessCount in Gen.Int[0, shape.Accesses]
        from checkCount in Gen.Int[0, shape.Checks]
        from repairCount in Gen.Int[1, shape.Repairs]
        from shares in Share.Array[causes]
        from unlisted in Gen.Frequency((1, Gen.Const(0.0)), (2, Gen.Double[0.02, 0.5]))
        from specialist in Gen.Int[0, 60]
        from accesses in Accesses(accessCount, shape.Exclusions)
        from checks in Check(causes, checkCount, accessCount).Array[checkCount]
        from repairs in Repair(causes, checkCount, accessCount).Array[repairCount]
        select Usable(new Situation
        {
            Probabilities = Normalise(shares, 1 - unlisted),
            Unlisted = unlisted,
            SpecialistCost = specialist,
            Accesses = accesses,
            Checks = checks,
            Repairs = repairs,
        });

    /// <summary>
    /// Jobs as a workshop sees them: checks cheaper than repairs, repairs cheaper than handing over, a repair or two for every cause, checks that move
    /// some causes and leave others alone. Here plans are long and the order matters.
    /// </summary>
    internal static Gen<Situation> Jobs(Shape shape) =>
        from shares in Gen.Double[0.05, 1].Array[shape.Causes]
        from specialist in Gen.Int[150, 400]
        from accessCosts in Gen.Int[2, 15].Array[shape.Accesses]
        from checks in JobCheck(shape).Array[shape.Checks]
        from costs in Gen.Int[10, 80].Array[shape.Repairs]
        from needs in Some(shape.Accesses, 1).Array[shape.Repairs]
        from extra in Gen.Int[0, shape.Causes - 1].Array[shape.Repairs]
        from sure in Gen.Double[0.6, 1].Array[shape.Repairs]
        select new Situation
        {
            Probabilities = Normalise(shares, 0.95),
            Unlisted = 0.05,
            SpecialistCost = specialist,
            Accesses = [.. accessCosts.Select(c => new PlanAccess { Cost = c })],
            Checks = checks,
            Repairs = [.. Enumerable.Range(0, shape.Repairs).Select(r => new PlanRepair
            {
                Cost = costs[r],
                Needs = needs[r],
                Cures = [.. Enumerable.Range(0, shape.Causes).Where(h => h % shape.Repairs == r || h == extra[r]).Select(h => new Cure(h, h == extra[r] ? sure[r] : 1))],
            })],
        };

    private static Gen<PlanCheck> JobCheck(Shape shape) =>
        from cost in Gen.Int[1, 15]
        from needs in Some(shape.Accesses, 1)
        from outcomes in Gen.Int[2, 3]
        from moved in Gen.Bool.Array[shape.Causes + 1]
        from columns in Gen.Double[0.02, 1].Array[outcomes].Array[shape.Causes + 1]
        let likelihoods = columns.Select((c, h) => Normalise(moved[h] ? [.. c.Select(x => x * x * x)] : [.. c.Select((_, o) => o == 0 ? 9.0 : 1.0 / (outcomes - 1))], 1)).ToArray()
        select new PlanCheck
        {
            Cost = cost,
            Needs = needs,
            Outcomes = [.. Enumerable.Range(0, outcomes).Select(o => new PlanOutcome
            {
                Likelihoods = [.. likelihoods[..^1].Select(l => l[o])],
                Unlisted = likelihoods[^1][o],
            })],
        };

    private static Gen<double> Share => Gen.Frequency((1, Gen.Const(0.0)), (6, Gen.Double[0.05, 1]));

    private static Gen<double> Cost => Gen.Frequency((1, Gen.Const(0.0)), (8, Gen.Int[1, 20].Select(c => (double)c)));

    private static Gen<int[]> Some(int count, int most) =>
        count == 0 ? Gen.Const(Array.Empty<int>()) : Gen.Int[0, count - 1].Array[0, most].Select(a => a.Distinct().ToArray());

    private static Gen<PlanAccess[]> Accesses(int count, bool exclusions) =>
        from costs in Cost.Array[count]
        from needs in Some(count, 1).Array[count]
        from excludes in (exclusions ? Some(count, 1) : Gen.Const(Array.Empty<int>())).Array[count]
        from open in Gen.Int[0, 4].Array[count]
        select Enumerable.Range(0, count).Select(i => new PlanAccess
        {
            Cost = costs[i],
            Needs = [.. needs[i].Where(n => n < i)],
            Excludes = [.. excludes[i].Where(e => e != i)],
            IsOpen = open[i] == 0,
        }).ToArray();

    private static Gen<PlanCheck> Check(int causes, int checkCount, int accessCount) =>
        from cost in Cost
        from needs in Some(accessCount, 2)
        from outcomes in Gen.Int[1, 3]
        from columns in Gen.Frequency((1, Gen.Const(0.0)), (3, Gen.Double[0.01, 1])).Array[outcomes].Array[causes + 1]
        from pointless in Some(checkCount, 1).Array[outcomes]
        from state in State
        select new PlanCheck
        {
            Cost = cost,
            Needs = needs,
            State = state,
            Outcomes = [.. Enumerable.Range(0, outcomes).Select(o => new PlanOutcome
            {
                Likelihoods = [.. Enumerable.Range(0, causes).Select(h => Normalise(columns[h], 1)[o])],
                Unlisted = Normalise(columns[causes], 1)[o],
                MakesPointless = pointless[o],
            })],
        };

    private static Gen<PlanRepair> Repair(int causes, int checkCount, int accessCount) =>
        from cost in Cost
        from needs in Some(accessCount, 2)
        from after in Gen.Frequency((3, Gen.Const(Array.Empty<int>())), (1, Some(checkCount, 1)))
        from cured in Some(causes, 3)
        from sure in Gen.Frequency((1, Gen.Const(0.0)), (4, Gen.Const(1.0)), (3, Gen.Double[0.3, 0.99])).Array[3]
        from state in State
        select new PlanRepair { Cost = cost, Needs = needs, After = after, State = state, Cures = [.. cured.Select((c, i) => new Cure(c, sure[i]))] };

    private static Gen<StepState> State =>
        Gen.Frequency((10, Gen.Const(StepState.Offered)), (1, Gen.Const(StepState.Done)), (1, Gen.Const(StepState.Withheld)));

    /// <summary>Random needs may exclude each other; whatever cannot be opened then needs nothing.</summary>
    private static Situation Usable(Situation situation)
    {
        while (SituationFaults.Find(situation).Count > 0)
        {
            situation = situation with
            {
                Accesses = [.. situation.Accesses.Select(a => a with { Excludes = [] })],
            };
        }

        return situation;
    }

    private static double[] Normalise(double[] values, double total)
    {
        var sum = values.Sum();
        return [.. values.Select(v => sum > 0 ? v / sum * total : total / values.Length)];
    }
}
