using CsCheck;
using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

public sealed class BoundedPlanTests
{
    private const int Sample = 120;

    private const long Plenty = 2_000_000_000;

    /// <summary>
    /// The optimum comes from the exact search, which <see cref="BruteForceTests"/> compares with the brute force on smaller jobs of the same kind.
    /// </summary>
    [Fact]
    public void Lookahead_StaysCloseToTheOptimum()
    {
        List<double> meagre = [];
        List<double> fair = [];
        foreach (var situation in Fixed(Situations.Jobs(new(6, 5, 5, 3, Exclusions: false)), Sample))
        {
            var optimum = Plans.Of(situation, Plenty);
            optimum.IsExact.ShouldBeTrue();
            meagre.Add((Plans.Of(situation, 100_000, exactly: false).ExpectedCost / optimum.ExpectedCost) - 1);
            fair.Add((Plans.Of(situation, 1_000_000, exactly: false).ExpectedCost / optimum.ExpectedCost) - 1);
        }

        TestContext.Current.SendDiagnosticMessage(
            "Mean and worst excess of {0}: {1:P3}, {2:P2} with 100 000; {3:P3}, {4:P2} with 1 000 000", Sample, meagre.Average(), meagre.Max(), fair.Average(), fair.Max());
        meagre.Concat(fair).Min().ShouldBeGreaterThan(-1e-9);
        meagre.Average().ShouldBeLessThanOrEqualTo(0.02);
        fair.Average().ShouldBeLessThanOrEqualTo(0.01);
        // Otherwise the sample would be too easy to say anything.
        meagre.Max().ShouldBeGreaterThan(0.001);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void ChecksBehindOneDearAccess_AreWeighedTogether(bool exactly)
    {
        // Four equally likely causes, each with a repair at 50: repairs alone cost 50 * (1 + 3/4 + 1/2 + 1/4) = 125. One of the checks saves 50
        // and does not pay for the access at 60, both together save 75 and do: 60 + 50 = 110.
        var situation = new Situation
        {
            Probabilities = [0.25, 0.25, 0.25, 0.25],
            SpecialistCost = 1000,
            Accesses = [new() { Cost = 60 }],
            Checks = [Halving([1, 1, 0, 0]), Halving([1, 0, 1, 0])],
            Repairs = [.. Enumerable.Range(0, 4).Select(i => new PlanRepair { Cost = 50, Cures = [new(i, 1)] })],
        };

        var plan = Plans.Of(situation, exactly: exactly);

        plan.RepairsOnlyCost.ShouldBe(125, 1e-9);
        plan.ExpectedCost.ShouldBe(110, 1e-9);
        plan.Steps[0].Kind.ShouldBe(StepKind.Check);
        plan.Steps[0].Cost.ShouldBe(60);
    }

    [Fact]
    public void LargeSituation_IsPlannedWithinItsBudget()
    {
        var large = new Situations.Shape(60, 40, 40, 10, Exclusions: false);
        foreach (var situation in Fixed(Situations.Jobs(large), 5))
        {
            var plan = Plans.Of(situation, 1_000_000);

            plan.Work.ShouldBeLessThan(1_500_000);
            plan.ExpectedCost.ShouldBeLessThanOrEqualTo(plan.RepairsOnlyCost);
            plan.Steps.Count(s => s.Kind == StepKind.Check).ShouldBe(situation.Checks.Count(c => c.State == StepState.Offered));
        }
    }

    [Fact]
    public void CancelledToken_EndsTheSearch()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();

        Should.Throw<OperationCanceledException>(() => Planner.Plan(Reference.DependentActions, cancellationToken: source.Token));
    }

    private static PlanCheck Halving(double[] positive) => new()
    {
        Cost = 0,
        Needs = [0],
        Outcomes = [new() { Likelihoods = positive }, new() { Likelihoods = [.. positive.Select(p => 1 - p)] }],
    };

    /// <summary>The same sample on every run.</summary>
    private static IEnumerable<Situation> Fixed(Gen<Situation> gen, int count)
    {
        var source = new PCG(1, 20_261);
        for (var i = 0; i < count; i++)
        {
            yield return gen.Generate(source, null, out _);
        }
    }
}
