using CsCheck;
using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

public sealed class PlanPropertyTests
{
    private const int Samples = 500;

    private static Gen<Situation> Any => Situations.Of(Situations.Small);

    [Fact]
    public void ExpectedCost_IsNeverAboveHandingOverOrRepairsAlone() =>
        (from situation in Any from budget in Gen.OneOf(Gen.Const(0L), Gen.Const(3_000L), Gen.Const(1_000_000L)) select (situation, budget)).Sample(
            (situation, budget) =>
            {
                var plan = Plans.Of(situation, budget);

                plan.ExpectedCost.ShouldBeLessThanOrEqualTo(situation.SpecialistCost);
                plan.ExpectedCost.ShouldBeLessThanOrEqualTo(plan.RepairsOnlyCost);
                plan.ExpectedCost.ShouldBe(plan.Steps.Min(s => s.Total), 1e-9);
                plan.ExpectedCost.ShouldBe(plan.Steps[0].Total, 1e-9);
                plan.ExpectedCost.ShouldBeGreaterThanOrEqualTo(BruteForce.LeastCost(situation) - 1e-9);
            },
            iter: Samples, threads: 1);

    [Fact]
    public void FreeUselessCheck_ChangesNothing() =>
        (from situation in Any from exactly in Gen.Bool from sure in Gen.Double[0, 1] select (situation, exactly, sure)).Sample(
            (situation, exactly, sure) =>
            {
                PlanOutcome Answer(double probability) =>
                    new() { Likelihoods = [.. situation.Probabilities.Select(_ => probability)], Unlisted = probability };
                var with = situation with { Checks = [.. situation.Checks, new PlanCheck { Cost = 0, Outcomes = [Answer(sure), Answer(1 - sure)] }] };

                var plan = Plans.Of(situation, exactly: exactly);
                var more = Plans.Of(with, exactly: exactly);

                more.ExpectedCost.ShouldBe(plan.ExpectedCost, 1e-9);
                (more.Steps[0].Kind, more.Steps[0].Index).ShouldBe((plan.Steps[0].Kind, plan.Steps[0].Index));
                more.Steps.ShouldContain(s => s.Kind == StepKind.Check && s.Index == situation.Checks.Count && s.IsIdle);
            },
            iter: Samples, threads: 1);

    [Fact]
    public void ScalingAllCosts_ScalesEveryTotal() =>
        (from situation in Any from scale in Gen.OneOf(Gen.Const(0.25), Gen.Const(3.0), Gen.Const(1000.0)) select (situation, scale)).Sample(
            (situation, scale) =>
            {
                var scaled = situation with
                {
                    SpecialistCost = situation.SpecialistCost * scale,
                    Accesses = [.. situation.Accesses.Select(a => a with { Cost = a.Cost * scale })],
                    Checks = [.. situation.Checks.Select(c => c with { Cost = c.Cost * scale })],
                    Repairs = [.. situation.Repairs.Select(r => r with { Cost = r.Cost * scale })],
                };

                ShouldAgree(Totals(Plans.Of(scaled)), Totals(Plans.Of(situation)).ToDictionary(t => t.Key, t => t.Value * scale), 1e-9 * scale);
            },
            iter: Samples, threads: 1);

    [Fact]
    public void PermutingIndices_PermutesTheAnswer() =>
        (from situation in Any from seed in Gen.Int select (situation, seed)).Sample(
            (situation, seed) =>
            {
                var permutation = new Permutation(situation, new Random(seed));

                var plan = Plans.Of(situation);
                var permuted = Plans.Of(permutation.Apply());

                ShouldAgree(Totals(permuted), Totals(plan).ToDictionary(t => permutation.Renamed(t.Key), t => t.Value), 1e-9);
            },
            iter: Samples, threads: 1);

    [Fact]
    public void AccessThatIsOpenAlready_NeverRaisesTheCost() =>
        Situations.Of(Situations.Small with { Exclusions = false }).Sample(
            situation =>
            {
                var plan = Plans.Of(situation);
                for (var i = 0; i < situation.Accesses.Count; i++)
                {
                    var index = i;
                    var open = situation with { Accesses = [.. situation.Accesses.Select((a, j) => j == index ? a with { IsOpen = true } : a)] };

                    Plans.Of(open).ExpectedCost.ShouldBeLessThanOrEqualTo(plan.ExpectedCost + 1e-9);
                }
            },
            iter: Samples, threads: 1);

    [Fact]
    public void ManyAccessesBehindUselessChecks_ChangeNothing() =>
        Situations.Of(Situations.Small with { Exclusions = false }).Sample(
            situation =>
            {
                var first = situation.Accesses.Count;
                var with = situation with
                {
                    Accesses = [.. situation.Accesses, .. Enumerable.Range(0, 70).Select(_ => new PlanAccess { Cost = 1 })],
                    Checks = [.. situation.Checks, .. Enumerable.Range(0, 70).Select(i => new PlanCheck
                    {
                        Cost = 1,
                        Needs = [first + i],
                        Outcomes = [new() { Likelihoods = [.. situation.Probabilities.Select(_ => 1.0)], Unlisted = 1 }],
                    })],
                };

                Plans.Of(with).ExpectedCost.ShouldBe(Plans.Of(situation).ExpectedCost, 1e-9);
            },
            iter: 50, threads: 1);

    [Fact]
    public void SameSituation_GetsTheSamePlanToTheLastDigit() =>
        Any.Sample(
            situation => Plans.Of(situation, 20_000).Steps.ShouldBe(Plans.Of(situation, 20_000).Steps),
            iter: 100, threads: 1);

    private static Dictionary<(StepKind Kind, int Index), double> Totals(Plan plan) => plan.Steps.ToDictionary(s => (s.Kind, s.Index), s => s.Total);

    private static void ShouldAgree(Dictionary<(StepKind Kind, int Index), double> actual, Dictionary<(StepKind Kind, int Index), double> expected, double tolerance)
    {
        actual.Keys.ShouldBe(expected.Keys, ignoreOrder: true);
        foreach (var (step, total) in expected)
        {
            actual[step].ShouldBe(total, tolerance, step.ToString());
        }
    }
}
