using CsCheck;
using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

/// <summary>A look is never rated worse than to take it and then to follow the best plan known.</summary>
public sealed class ConsistencyTests
{
    private static Gen<Situation> Jobs =>
        from causes in Gen.Int[10, 20]
        from checks in Gen.Int[6, 12]
        from repairs in Gen.Int[6, 12]
        from situation in Situations.Jobs(new(causes, checks, repairs, 4, Exclusions: false))
        select situation;

    [Fact]
    public void EveryCheck_CostsAtMostItselfAndTheBestPlanKnown() =>
        (from situation in Jobs from budget in Gen.OneOf(Gen.Const(0L), Gen.Const(50_000L), Gen.Const(400_000L)) select (situation, budget)).Sample(
            (situation, budget) =>
            {
                var plan = Plans.Of(situation, budget);

                foreach (var step in plan.Steps.Where(s => s.Kind == StepKind.Check))
                {
                    // What the plan does with its accesses opened stays possible: nothing closes here and no answer makes a check pointless.
                    step.Total.ShouldBeLessThanOrEqualTo(step.Cost + plan.ExpectedCost + 1e-9);
                }
            },
            iter: 60, threads: 1);

    [Fact]
    public void CheckThatTellsEverything_IsTakenFirstThoughAPlanWithoutItIsKnown()
    {
        // It costs next to nothing and names the cause; any other step first is the same job with less known.
        Jobs.Sample(
            situation =>
            {
                var causes = situation.Probabilities.Count;
                var oracle = new PlanCheck
                {
                    Cost = 0.1,
                    Outcomes = [.. Enumerable.Range(0, causes + 1).Select(o => new PlanOutcome
                    {
                        Likelihoods = [.. Enumerable.Range(0, causes).Select(h => h == o ? 1.0 : 0)],
                        Unlisted = o == causes ? 1 : 0,
                    })],
                };

                var plan = Plans.Of(situation with { Checks = [.. situation.Checks, oracle] }, 200_000);

                (plan.Steps[0].Kind, plan.Steps[0].Index).ShouldBe((StepKind.Check, situation.Checks.Count));
            },
            iter: 40, threads: 1);
    }

    [Fact]
    public void Estimate_IsAnExpectedCostThatPlayingKeepsTo()
    {
        // The plan is made anew after every answer, so what is spent on average stays below what was expected at the start.
        var source = new PCG(1, 5);
        for (var i = 0; i < 4; i++)
        {
            var situation = Situations.Jobs(new(12, 6, 8, 3, Exclusions: false)).Generate(source, null, out _);

            Played(situation, probability: 1).ShouldBeLessThanOrEqualTo(Plans.Of(situation, 100_000, exactly: false).ExpectedCost * 1.005);
        }
    }

    /// <summary>The expected cost of asking the planner again after every answer, by following every branch down to a probability of 0.001.</summary>
    private static double Played(Situation situation, double probability)
    {
        if (probability < 0.001)
        {
            return situation.SpecialistCost;
        }

        var step = Plans.Of(situation, 20_000, exactly: false).Steps[0];
        if (step.Kind == StepKind.Specialist)
        {
            return step.Cost;
        }

        if (step.Kind == StepKind.Check)
        {
            return step.Cost + situation.Forecast(step.Index).Sum(f => f.Probability * Played(situation.AfterCheck(step.Index, f.Outcome), probability * f.Probability));
        }

        var cured = situation.Repairs[step.Index].Cures.Sum(c => c.Probability * situation.Probabilities[c.Cause]);
        return cured > 1 - 1e-12 ? step.Cost : step.Cost + ((1 - cured) * Played(situation.AfterRepair(step.Index), probability * (1 - cured)));
    }
}
