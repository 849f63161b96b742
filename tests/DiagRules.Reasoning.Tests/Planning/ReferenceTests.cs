using DiagRules.Reasoning.Planning;
using DiagRules.Reasoning.Planning.Search;

namespace DiagRules.Reasoning.Tests.Planning;

public sealed class ReferenceTests
{
    private const double Tolerance = 1e-9;

    // Heckerman, Breese and Rommelse, "Decision-Theoretic Troubleshooting", CACM 38(3), 1995, pp. 49-57; the order also Kadane and Simon 1977.
    // Formula from memory, the numbers are ours: all 120 orders of this example were enumerated, the least cost is 58.45.
    private static readonly double[] Probabilities = [0.35, 0.25, 0.20, 0.15, 0.05];
    private static readonly double[] Observing = [10, 4, 6, 2, 1];
    private static readonly double[] Repairing = [50, 20, 80, 15, 100];

    [Fact]
    public void IndependentRepairs_AreOrderedByProbabilityOverCost()
    {
        var situation = new Situation
        {
            Probabilities = Probabilities,
            SpecialistCost = 1000,
            Repairs = [.. Observing.Select((cost, i) => new PlanRepair { Cost = cost, Cures = [new(i, 1)] })],
        };

        var plan = Plans.Of(situation);

        plan.Repairs.Select(r => r.Repair).ShouldBe([3, 1, 4, 0, 2]);
        // Without the costs of repair, which are paid for the faulty component whatever the order.
        plan.ExpectedCost.ShouldBe(58.45 - Probabilities.Zip(Repairing, (p, c) => p * c).Sum(), Tolerance);
        plan.RepairsOnlyCost.ShouldBe(plan.ExpectedCost, Tolerance);
    }

    [Fact]
    public void InspectThenRepair_CostsWhatTheFormulaSays()
    {
        var situation = new Situation
        {
            Probabilities = Probabilities,
            SpecialistCost = 1000,
            Checks = [.. Observing.Select((cost, i) => new PlanCheck { Cost = cost, Outcomes = [Faulty(i, 0), Faulty(i, 1)] })],
            Repairs = [.. Repairing.Select((cost, i) => new PlanRepair { Cost = cost, Cures = [new(i, 1)], After = [i] })],
        };

        var plan = Plans.Of(situation);

        plan.IsExact.ShouldBeTrue();
        plan.ExpectedCost.ShouldBe(58.45, Tolerance);
        (plan.Steps[0].Kind, plan.Steps[0].Index).ShouldBe((StepKind.Check, 3));
    }

    [Fact]
    public void DependentActions_RuleOfThumbCosts150()
    {
        var compiled = new CompiledSituation(Reference.DependentActions);
        var board = new Board(compiled, new WorkMeter(1_000_000, CancellationToken.None));

        var cost = board.Policy.GreedyCost(board.Start.Weights, 1, board.Start.State, board.Tried);

        cost.ShouldBe(1.50, Tolerance);
    }

    [Fact]
    public void DependentActions_BestPlanCosts145AndBeginsWithTheThird()
    {
        var plan = Plans.Of(Reference.DependentActions);

        plan.IsExact.ShouldBeTrue();
        plan.ExpectedCost.ShouldBe(1.45, Tolerance);
        (plan.Steps[0].Kind, plan.Steps[0].Index).ShouldBe((StepKind.Repair, 2));
        plan.Repairs.Select(r => r.Repair).ShouldBe([2, 0]);
    }

    // Pattipati and Alexandridis, "Application of Heuristic Search and Information Theory to Sequential Fault Diagnosis", IEEE Trans. SMC 20(4), 1990:
    // the example with five tests and a state without fault. Matrix, priors and optimum from memory; the optimum was reproduced by dynamic programming.
    [Fact]
    public void TestSequencing_FiveTests_NeedsTheLeastExpectedNumberOfTests()
    {
        int[][] failures = [[0, 0, 0, 0, 0], [0, 1, 0, 0, 1], [0, 0, 1, 1, 0], [1, 0, 0, 1, 1], [1, 1, 0, 0, 0], [1, 1, 1, 1, 0]];
        var situation = Reference.Identification([0.7, 0.01, 0.02, 0.1, 0.05, 0.12], failures, [[0], [1], [2], [3], [4], [5]], 10_000);

        var plan = Plans.Of(situation);

        plan.IsExact.ShouldBeTrue();
        (plan.ExpectedCost - 10_000).ShouldBe(2.18, 1e-7);
    }

    // Ours, computed by dynamic programming over the sets of faults that are left.
    [Fact]
    public void TestSequencing_AmbiguousFaults_StopsAtTheAmbiguityGroup()
    {
        int[][] failures =
        [
            [1, 0, 0, 1, 0], [1, 0, 0, 1, 0], [0, 1, 0, 1, 0], [0, 1, 1, 0, 0], [0, 1, 1, 0, 0],
            [0, 1, 1, 0, 0], [0, 0, 0, 0, 1], [0, 0, 0, 0, 0], [0, 0, 1, 0, 0], [1, 1, 0, 1, 0],
        ];
        double[] rates = [4.0, 1.0, 2.5, 0.8, 0.5, 0.2, 0.7, 0.3, 0.6, 0.4];
        var situation = Reference.Identification(rates, failures, [[0, 1], [2], [3, 4, 5], [6], [7], [8], [9]], 10_000);

        var plan = Plans.Of(situation);

        plan.IsExact.ShouldBeTrue();
        (plan.ExpectedCost - 10_000).ShouldBe(2.49090909091, 1e-7);
    }

    private static PlanOutcome Faulty(int component, int answer) =>
        new() { Likelihoods = [.. Probabilities.Select((_, i) => i == component == (answer == 0) ? 1.0 : 0.0)] };
}
