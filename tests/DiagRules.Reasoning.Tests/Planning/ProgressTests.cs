using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

public sealed class ProgressTests
{
    /// <summary>A cover (1) that comes off with the supply isolated (0), and a check that needs the cover off and the supply live (2).</summary>
    private static Situation Cover { get; } = new()
    {
        Probabilities = [0.5, 0.3],
        Unlisted = 0.2,
        SpecialistCost = 300,
        Accesses = [new() { Cost = 5, Excludes = [2] }, new() { Cost = 7, Needs = [0] }, new() { Cost = 1 }],
        Checks =
        [
            new() { Cost = 2, Needs = [1, 2], Outcomes = [new() { Likelihoods = [0.9, 0.1], Unlisted = 0.5, MakesPointless = [1] }, new() { Likelihoods = [0.1, 0.9], Unlisted = 0.5 }] },
            new() { Cost = 3, Outcomes = [new() { Likelihoods = [1, 1], Unlisted = 1 }], State = StepState.Withheld },
        ],
        Repairs = [new() { Cost = 20, Cures = [new(0, 0.8)], Needs = [0] }, new() { Cost = 30, Cures = [new(1, 1)], After = [1] }],
    };

    [Fact]
    public void StepThatNeedsWhatExcludesAPrerequisite_OpensInTheRightOrder()
    {
        var step = Plans.Of(Cover).Steps.Single(s => s.Kind == StepKind.Check);

        // Isolate (5), take the cover off (7), supply live again (1), then the check itself (2).
        step.Cost.ShouldBe(15);
        Cover.AfterCheck(0, 0).Accesses.Select(a => a.IsOpen).ShouldBe([false, true, true]);
    }

    [Fact]
    public void ClosedAgain_IsPaidAgain()
    {
        var after = Cover.AfterCheck(0, 1);

        Plans.Of(Cover).Steps.Single(s => (s.Kind, s.Index) == (StepKind.Repair, 0)).Cost.ShouldBe(25);
        Plans.Of(after).Steps.Single(s => (s.Kind, s.Index) == (StepKind.Repair, 0)).Cost.ShouldBe(25);
        after.AfterRepair(0).Accesses.Select(a => a.IsOpen).ShouldBe([true, true, false]);
    }

    [Fact]
    public void Forecast_IsBayesRule()
    {
        var forecast = Cover.Forecast(0);

        forecast[0].Probability.ShouldBe(0.58, 1e-12);
        forecast[0].Probabilities[0].ShouldBe(0.45 / 0.58, 1e-12);
        forecast[0].Probabilities[1].ShouldBe(0.03 / 0.58, 1e-12);
        forecast[0].Unlisted.ShouldBe(0.10 / 0.58, 1e-12);
        forecast.Sum(f => f.Probability).ShouldBe(1, 1e-12);
    }

    [Fact]
    public void PointlessCheck_IsNotWaitedFor()
    {
        Plans.Of(Cover).Steps.ShouldNotContain(s => s.Kind == StepKind.Repair && s.Index == 1);
        Plans.Of(Cover.AfterCheck(0, 0)).Steps.ShouldContain(s => s.Kind == StepKind.Repair && s.Index == 1);
        Plans.Of(Cover.AfterCheck(0, 1)).Steps.ShouldNotContain(s => s.Kind == StepKind.Repair && s.Index == 1);
    }

    [Fact]
    public void RepairInVain_TakesWhatItWouldHaveCured()
    {
        var after = Cover.AfterRepair(0);

        after.Probabilities.ShouldBe([0.1 / 0.6, 0.3 / 0.6], 1e-12);
        after.Unlisted.ShouldBe(0.2 / 0.6, 1e-12);
        after.Repairs[0].State.ShouldBe(StepState.Done);
    }

    [Fact]
    public void StepThatCannotBeDone_IsRefusedWithTheReason()
    {
        Should.Throw<ArgumentException>(() => Cover.AfterCheck(1, 0)).Message.ShouldStartWith("Check 1 is withheld; only an offered one can be done.");
        Should.Throw<ArgumentException>(() => Cover.AfterRepair(1)).Message.ShouldStartWith("Repair 1 comes after checks 1; do these first.");
        Should.Throw<ArgumentException>(() => Cover.AfterRepair(0).AfterRepair(0)).Message.ShouldStartWith("Repair 0 is done already; only an offered one can be done.");
        Should.Throw<ArgumentOutOfRangeException>(() => Cover.AfterCheck(0, 2)).Message.ShouldStartWith("There are 2, counted from 0.");
    }

    [Fact]
    public void AnswerOrFailureOfProbabilityZero_IsRefused()
    {
        var certain = new Situation
        {
            Probabilities = [1],
            SpecialistCost = 10,
            Checks = [new() { Cost = 1, Outcomes = [new() { Likelihoods = [1] }, new() { Likelihoods = [0] }] }],
            Repairs = [new() { Cost = 1, Cures = [new(0, 1)] }],
        };

        Should.Throw<ArgumentException>(() => certain.AfterCheck(0, 1)).Message.ShouldStartWith("Answer 1 of check 0 has probability 0 here;");
        Should.Throw<ArgumentException>(() => certain.AfterRepair(0)).Message.ShouldStartWith("Repair 0 cures every cause that is possible here,");
    }
}
