using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

public sealed class EdgeCaseTests
{
    [Fact]
    public void NothingListed_GoesToTheSpecialist()
    {
        var plan = Plans.Of(new Situation { Probabilities = [], Unlisted = 1, SpecialistCost = 80 });

        plan.ExpectedCost.ShouldBe(80);
        plan.Steps.ShouldHaveSingleItem().Kind.ShouldBe(StepKind.Specialist);
        plan.IsExact.ShouldBeTrue();
    }

    [Fact]
    public void FreeSpecialist_IsAskedAtOnce()
    {
        var plan = Plans.Of(Reference.DependentActions with { SpecialistCost = 0 });

        plan.ExpectedCost.ShouldBe(0);
        plan.Steps[0].Kind.ShouldBe(StepKind.Specialist);
    }

    [Fact]
    public void NothingToPay_StillRanksByCost()
    {
        var free = new PlanRepair { Cost = 0, Cures = [new(0, 1)] };
        var dear = new PlanRepair { Cost = 9, Cures = [new(0, 1)] };
        var cheap = new PlanRepair { Cost = 4, Cures = [new(0, 1)] };

        var plan = Plans.Of(new Situation { Probabilities = [1], SpecialistCost = 50, Repairs = [dear, cheap, free] });

        plan.Steps.Select(s => s.Total).ShouldBe([0, 4, 9, 50], 1e-12);
    }

    [Fact]
    public void FreeRepair_IsTriedBeforeAnythingIsPaidFor()
    {
        var free = new PlanRepair { Cost = 0, Cures = [new(3, 0.2)] };

        var plan = Plans.Of(Reference.DependentActions with { Repairs = [.. Reference.DependentActions.Repairs, free] });

        (plan.Steps[0].Kind, plan.Steps[0].Index, plan.Steps[0].Cost).ShouldBe((StepKind.Repair, 3, 0));
        plan.Repairs[0].Repair.ShouldBe(3);
    }

    [Fact]
    public void RepairThatCuresNothing_IsListedAsIdleAndCostsItsPrice()
    {
        var idle = new PlanRepair { Cost = 0, Cures = [new(0, 0)] };

        var plan = Plans.Of(Reference.DependentActions with { Repairs = [idle, .. Reference.DependentActions.Repairs] });

        plan.Steps.Single(s => s.Kind == StepKind.Repair && s.Index == 0).ShouldSatisfyAllConditions(
            s => s.IsIdle.ShouldBeTrue(),
            s => s.Total.ShouldBe(1.45, 1e-9));
        (plan.Steps[0].Kind, plan.Steps[0].Index).ShouldBe((StepKind.Repair, 3));
    }

    [Fact]
    public void EquallyGoodSteps_ComeByKindThenIndex()
    {
        var situation = new Situation
        {
            Probabilities = [0.5, 0.5],
            SpecialistCost = 15,
            Repairs = [new() { Cost = 10, Cures = [new(0, 1)] }, new() { Cost = 10, Cures = [new(1, 1)] }],
        };

        var plan = Plans.Of(situation);

        plan.Steps.Select(s => (s.Kind, s.Index, s.Total)).ShouldBe([(StepKind.Repair, 0, 15), (StepKind.Repair, 1, 15), (StepKind.Specialist, 0, 15)]);
    }

    [Fact]
    public void PlannedRepairs_AddUpToWhatRepairsAloneCost()
    {
        var situation = Reference.DependentActions with { SpecialistCost = 2, Unlisted = 0.5, Probabilities = [0.1, 0.125, 0.2, 0.075] };

        var plan = Plans.Of(situation);

        var left = plan.Repairs.Count == 0 ? 1 : plan.Repairs[^1].Reached - plan.Repairs[^1].Cured;
        plan.RepairsOnlyCost.ShouldBe(plan.Repairs.Sum(r => r.Cost * r.Reached) + (left * situation.SpecialistCost), 1e-9);
    }

    [Fact]
    public void NegativeBudget_IsRefused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => Plans.Of(Reference.DependentActions, budget: -1));
}
