using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

/// <summary>Worked examples from the literature as situations. Costs of giving up are set so high that nobody would.</summary>
internal static class Reference
{
    /// <summary>
    /// Jensen and Nielsen, Bayesian Networks and Decision Graphs, 2nd ed. 2007, ch. 9; also in T. J. Ottosen's thesis, 2012. The assignment of
    /// faults to actions is reconstructed from memory; it reproduces both published totals.
    /// </summary>
    internal static Situation DependentActions { get; } = new()
    {
        Probabilities = [0.2, 0.25, 0.4, 0.15],
        SpecialistCost = 1000,
        Repairs =
        [
            new() { Cost = 1, Cures = [new(0, 1), new(1, 1)] },
            new() { Cost = 1, Cures = [new(1, 1), new(2, 1)] },
            new() { Cost = 1, Cures = [new(2, 1), new(3, 1)] },
        ],
    };

    /// <summary>
    /// Identification as a situation: one repair per distinct group of states, all at the same price. The price is so high that a guess never pays,
    /// so the least expected cost is that price plus the expected number of tests of the best test tree.
    /// </summary>
    internal static Situation Identification(double[] priors, int[][] failures, int[][] groups, double repairCost)
    {
        var tests = failures[0].Length;
        return new Situation
        {
            Probabilities = [.. priors.Select(p => p / priors.Sum())],
            SpecialistCost = repairCost * 1000,
            Checks = [.. Enumerable.Range(0, tests).Select(t => new PlanCheck
            {
                Cost = 1,
                Outcomes =
                [
                    new() { Likelihoods = [.. failures.Select(row => 1.0 - row[t])] },
                    new() { Likelihoods = [.. failures.Select(row => (double)row[t])] },
                ],
            })],
            Repairs = [.. groups.Select(group => new PlanRepair { Cost = repairCost, Cures = [.. group.Select(state => new Cure(state, 1))] })],
        };
    }
}
