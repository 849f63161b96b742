using CsCheck;
using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

public sealed class BruteForceTests
{
    private const long Plenty = 200_000_000;

    [Fact]
    public void SmallSituations_AreSolvedExactly() =>
        Situations.Of(Situations.Small).Sample(
            situation =>
            {
                var plan = Plans.Of(situation, Plenty);

                plan.IsExact.ShouldBeTrue();
                plan.ExpectedCost.ShouldBe(BruteForce.LeastCost(situation), 1e-9);
            },
            iter: 3_000, threads: 1);

    [Fact]
    public void SmallJobs_AreSolvedExactly() =>
        Situations.Jobs(new(4, 3, 4, 2, Exclusions: false)).Sample(
            situation =>
            {
                var plan = Plans.Of(situation, Plenty);

                plan.IsExact.ShouldBeTrue();
                plan.ExpectedCost.ShouldBe(BruteForce.LeastCost(situation), 1e-9);
            },
            iter: 100, threads: 1);

    [Fact]
    public void EveryNextStep_IsPricedExactly() =>
        Situations.Of(Situations.Small).Sample(
            situation =>
            {
                var brute = new BruteForce(situation);
                foreach (var step in Plans.Of(situation, Plenty).Steps)
                {
                    step.IsExact.ShouldBeTrue();
                    step.Total.ShouldBe(brute.Total(step.Kind, step.Index), 1e-9);
                }
            },
            iter: 1_000, threads: 1);
}
