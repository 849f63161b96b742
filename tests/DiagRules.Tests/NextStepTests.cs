using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Tests;

public sealed class NextStepTests
{
    [Fact]
    public void A_deferred_repair_is_not_offered_and_says_why()
    {
        var diagnosis = SmallLift.Start("dead", ("feed-volts", "12.4 V"), ("load-volts", "0.1 V")).Diagnose();

        diagnosis.Deferred.Single().ShouldBe(new Deferral("renew-fuse", "no-new-fuse-yet", "It may open again."));
        diagnosis.Next.ShouldNotContain(step => step.Id == "renew-fuse");
        diagnosis.Withheld.Single(step => step.Id == "renew-fuse").Because.ShouldBe("'no-new-fuse-yet' keeps it back: It may open again.");
        diagnosis.Hazards[0].ShouldSatisfyAllConditions(
            hazard => hazard.Hazard.ShouldBe("hot-fuse"),
            hazard => hazard.SignalWord.ShouldBe(SignalWord.Warning),
            hazard => hazard.From.ShouldContain("no-new-fuse-yet"));
    }

    [Fact]
    public void A_check_that_decides_nothing_is_offered_without_answers_where_a_repair_waits_for_it()
    {
        var pack = TestSupport.PackText.Demo(("renew-brushes: { title: Renew the brushes,", "renew-brushes: { after: [feel], title: Renew the brushes,"), (
            "checks:", "checks:\n  feel: { title: Feel the motor, gives: [housing], minutes: 1 }"), (
            "readings:", "readings:\n  housing: { question: Temperature of the housing, unit: degC }")).Load().Require();
        var session = DiagnosisEngine.Compile(pack).Start(new SessionOptions { Steps = 0 });
        session.Observe("pump-sound", "clicks");

        var feel = session.Diagnose().Next.Single(step => step.Id == "feel");

        feel.Answers.ShouldBeEmpty();
        feel.Why.ShouldBe("It must be done before 'Renew the brushes'.");
    }

    [Fact]
    public void The_owner_is_offered_only_what_the_owner_can_do()
    {
        var session = SmallLift.Start("dead");
        session.Options.Skill = Skill.Owner;

        session.Diagnose().Next.ShouldAllBe(step => step.Skill == Skill.Owner);
        session.Diagnose().Withheld.Single(step => step.Id == "measure-coil").Because.ShouldBe("it takes a workshop");
    }

    [Fact]
    public void A_tool_that_is_not_at_hand_withholds_the_step()
    {
        var session = SmallLift.Start("dead");
        session.Options.Tools = [];

        session.Diagnose().Withheld.Single(step => step.Id == "measure-fuse").Because.ShouldBe("it takes multimeter");
    }

    [Fact]
    public void Access_is_paid_with_the_step_that_opens_it_and_not_again()
    {
        var session = SmallLift.Start("dead");
        session.Options.Steps = 0;
        var first = session.Diagnose().Next.Single(step => step.Id == "measure-coil");
        first.Minutes.ShouldBe(13);
        first.Opens.ShouldBe(["cover-off"]);

        session.Observe("coil-volts", "0.2 V");

        session.Diagnose().Next.Where(step => step.Kind == StepKind.Repair && step.Id == "renew-relay").ShouldAllBe(step => step.Minutes == 15);
    }

    [Fact]
    public void A_check_that_makes_no_sense_is_withheld()
    {
        SmallLift.Start(null, ("sound", "silent")).Diagnose().Withheld.Single(step => step.Id == "tap").Because
            .ShouldBe("it makes no sense while 'sound is runs or silent'");
    }

    [Fact]
    public void A_repair_waits_for_the_checks_it_comes_after()
    {
        var session = SmallLift.Start("dead");
        session.Options.Steps = 0;

        session.Diagnose().Next.ShouldNotContain(step => step.Id == "renew-relay");
        session.Observe("coil-volts", "24 V");
        session.Diagnose().Next.ShouldContain(step => step.Id == "renew-relay");
    }

    [Fact]
    public void What_is_known_is_not_asked_again()
    {
        SmallLift.Start("dead", ("oil", "enough")).Diagnose().Next.ShouldNotContain(step => step.Id == "oil");
    }

    [Fact]
    public void Money_is_turned_into_minutes_by_the_labour_rate()
    {
        // 30 EUR at 60 EUR/h are 30 minutes' worth; with the cover 40 + 10 + 30.
        var session = SmallLift.Start(null, ("sound", "clicks"), ("after-tap", "runs"));
        session.Options.Steps = 0;

        session.Diagnose().Next.Single(step => step.Id == "renew-brushes").Cost.ShouldBe(70, 1e-9);
    }

    [Fact]
    public void The_expected_cost_is_that_of_the_best_step_and_no_more_than_the_specialist()
    {
        var diagnosis = SmallLift.Start("dead").Diagnose();
        var best = diagnosis.Next[0];

        diagnosis.ExpectedCost.ShouldBe(best.Cost + best.ExpectedCostAfter, 1e-6);
        diagnosis.ExpectedCost.ShouldBeLessThanOrEqualTo(300);
    }

    [Fact]
    public void Answers_say_who_would_lead()
    {
        var session = SmallLift.Start("dead");
        session.Options.Steps = 0;
        var fuse = session.Diagnose().Next.Single(step => step.Id == "measure-fuse");

        fuse.TellsApart.ShouldContain("fuse-tired");
        fuse.Answers.Sum(answer => answer.Probability).ShouldBe(1, 1e-9);
        fuse.Answers.Single(answer => answer.Answer == "fuse is blown").Leads.ShouldBe("fuse-tired");
    }
}
