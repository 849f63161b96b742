using DiagRules.Reasoning.Planning;

namespace DiagRules.Benchmarks.Simulation;

/// <summary>
/// A made-up job of any size: checks cheaper than repairs, repairs cheaper than handing over, a repair or two for every cause, checks that move some
/// causes and leave the others alone.
/// </summary>
internal sealed class RandomJob(int seed)
{
    private readonly Random _random = new(seed);

    public Situation Draw(int causes, int checks, int repairs, int accesses) => new()
    {
        Probabilities = Normalised([.. Many(causes, () => Between(0.05, 1))], 0.95),
        Unlisted = 0.05,
        SpecialistCost = _random.Next(150, 401),
        Accesses = [.. Many(accesses, () => new PlanAccess { Cost = _random.Next(2, 16) })],
        Checks = [.. Many(checks, () => Check(causes, accesses))],
        Repairs = [.. Enumerable.Range(0, repairs).Select(r => Repair(r, causes, repairs, accesses))],
    };

    private PlanCheck Check(int causes, int accesses)
    {
        var answers = _random.Next(2, 4);
        double[] usual = [.. Enumerable.Range(0, answers).Select(o => o == 0 ? 0.9 : 0.1 / (answers - 1))];
        var columns = Many(causes + 1, () => _random.Next(2) == 0 ? usual : Normalised([.. Many(answers, () => Math.Pow(Between(0.02, 1), 3))], 1)).ToArray();
        return new PlanCheck
        {
            Cost = _random.Next(1, 16),
            Needs = Needs(accesses),
            Outcomes = [.. Enumerable.Range(0, answers).Select(o => new PlanOutcome
            {
                Likelihoods = [.. columns[..causes].Select(column => column[o])],
                Unlisted = columns[causes][o],
            })],
        };
    }

    /// <summary>Cures the causes of its own for sure and another one perhaps.</summary>
    private PlanRepair Repair(int repair, int causes, int repairs, int accesses)
    {
        var other = _random.Next(causes);
        var own = Enumerable.Range(0, causes).Where(cause => cause % repairs == repair && cause != other).Select(cause => new Cure(cause, 1));
        return new PlanRepair { Cost = _random.Next(10, 81), Needs = Needs(accesses), Cures = [.. own, new Cure(other, Between(0.6, 1))] };
    }

    private int[] Needs(int accesses) => accesses > 0 && _random.Next(2) == 0 ? [_random.Next(accesses)] : [];

    private double Between(double least, double most) => least + ((most - least) * _random.NextDouble());

    private static IEnumerable<T> Many<T>(int count, Func<T> make) => Enumerable.Range(0, count).Select(_ => make());

    private static double[] Normalised(double[] values, double total)
    {
        var sum = values.Sum();
        return [.. values.Select(value => value / sum * total)];
    }
}
