using DiagRules.Model;
using DiagRules.Model.Cases;

namespace DiagRules.Tests;

public sealed class SessionTests
{
    [Fact]
    public void Withdraw_ObservationBehindAConclusion_RemovesTheConclusion()
    {
        var session = SmallLift.Start(null, ("feed-volts", "12.4 V"), ("load-volts", "0.1 V"));
        session.GradeOf("fuse").ShouldBe("blown");

        session.Withdraw("load-volts").ShouldBeTrue();

        session.GradeOf("fuse").ShouldBeNull();
        session.Diagnose().Advice.ShouldBeEmpty();
    }

    [Fact]
    public void A_correction_replaces_what_the_earlier_value_concluded()
    {
        var session = SmallLift.Start(null, ("feed-volts", "12.4 V"), ("load-volts", "0.1 V"));

        session.Observe("load-volts", "12.3 V");

        session.GradeOf("fuse").ShouldBe("whole");
        session.Record.Count.ShouldBe(3);
    }

    [Fact]
    public void Withdrawing_is_the_same_as_never_having_observed()
    {
        var once = SmallLift.Start("dead", ("feed-volts", "12.4 V"));
        var twice = SmallLift.Start("dead", ("feed-volts", "12.4 V"), ("coil-volts", "24 V"), ("fuse", "blown"));

        twice.Withdraw("coil-volts");
        twice.Withdraw("fuse");

        DiagnosisJson.Write(twice.Diagnose()).ShouldBe(DiagnosisJson.Write(once.Diagnose()));
    }

    [Fact]
    public void Undo_takes_the_latest_observation_back()
    {
        var session = SmallLift.Start(null, ("sound", "clicks"), ("oil", "low"));

        session.Undo().ShouldBeTrue();

        session.Record.Single().Id.ShouldBe("sound");
        session.Undo().ShouldBeTrue();
        session.Undo().ShouldBeFalse();
    }

    [Fact]
    public void The_order_of_observations_does_not_matter()
    {
        var forward = SmallLift.Start(null, ("sound", "clicks"), ("oil", "low"), ("feed-volts", "12 V"), ("load-volts", "12 V"));
        var backward = SmallLift.Start(null, ("load-volts", "12 V"), ("feed-volts", "12 V"), ("oil", "low"), ("sound", "clicks"));

        DiagnosisJson.Write(backward.Diagnose()).ShouldBe(DiagnosisJson.Write(forward.Diagnose()));
    }

    [Fact]
    public void A_rule_that_rules_out_leaves_nothing_of_the_cause()
    {
        var session = SmallLift.Start("dead", ("coil-volts", "24 V"));

        session.ConfidenceOf("wire-broken").ShouldBe(0);
    }

    [Fact]
    public void A_precondition_that_is_met_is_ruled_out_and_one_that_is_not_met_leads()
    {
        SmallLift.Start("dead", ("cab-switch", "on")).ConfidenceOf("switched-off").ShouldBe(0);
        SmallLift.Start("dead", ("cab-switch", "off")).Diagnose().Hypotheses[0].Cause.ShouldBe("switched-off");
    }

    [Fact]
    public void A_doubtful_observation_is_unknown_to_what_rules_out_and_taken_at_its_word_by_advice()
    {
        var session = SmallLift.Start();
        session.Observe(new Observation("cab-switch", new Seen(Model.Conditions.GradeSet.Of(0))) { Trust = 0.6 });
        session.Observe(new Observation("fuse", new Seen(Model.Conditions.GradeSet.Of(1))) { Trust = 0.6 });

        session.ConfidenceOf("switched-off").ShouldBeGreaterThan(0);
        session.Diagnose().Advice.Single().Rule.ShouldBe("no-new-fuse-yet");
    }

    [Fact]
    public void An_open_answer_decides_nothing_until_all_its_grades_agree()
    {
        var session = SmallLift.Start(null, ("sound", "clicks or silent"));

        session.GradeOf("sound").ShouldBe("clicks or silent");
        session.ConfidenceOf("brushes-worn").ShouldBeInRange(0.2, 0.7);
    }

    [Fact]
    public void Cannot_tell_weighs_nothing_and_is_not_asked_again()
    {
        var before = SmallLift.Start("dead");
        var session = SmallLift.Start("dead");
        session.Observe("oil", "cannot-tell", Skill.Workshop);

        session.ConfidenceOf("oil-lost").ShouldBe(before.ConfidenceOf("oil-lost"));
        session.Diagnose().Next.ShouldNotContain(step => step.Id == "oil");
        session.Diagnose().Withheld.Single(step => step.Id == "oil").Because.ShouldBe("it was asked and could not be told");
    }

    [Fact]
    public void Cannot_tell_does_not_take_the_complaint_back()
    {
        var session = SmallLift.Start("dead", ("sound", "cannot-tell"));

        session.GradeOf("sound").ShouldBe("silent");
        SmallLift.Start(null, ("sound", "silent"), ("sound", "cannot-tell")).GradeOf("sound").ShouldBeNull();
    }

    [Fact]
    public void An_implausible_value_is_kept_on_record_and_used_for_nothing()
    {
        var session = SmallLift.Start();

        var result = session.Observe("feed-volts", "124 V");

        result.IsAccepted.ShouldBeTrue();
        result.IsUsed.ShouldBeFalse();
        session.Record.Count.ShouldBe(1);
        session.Diagnose().Readings.ShouldBeEmpty();
        session.Diagnose().Notes.ShouldContain(note => note.Contains("'feed-volts' of 124 V", StringComparison.Ordinal));
    }

    [Fact]
    public void An_over_range_reading_lies_beyond_every_limit_and_takes_no_part_in_arithmetic()
    {
        var session = SmallLift.Start(null, ("feed-volts", "over-range"), ("load-volts", "0.2 V"));

        session.GradeOf("fuse").ShouldBe("blown");
        session.Diagnose().Readings.ShouldNotContain(reading => reading.Reading == "fuse-drop");
    }

    [Fact]
    public void Two_sides_that_disagree_are_reported_and_left_out()
    {
        var session = SmallLift.Start(null, ("fuse", "whole"), ("feed-volts", "12.4 V"), ("load-volts", "0.1 V"));
        var diagnosis = session.Diagnose();

        var contradiction = diagnosis.Contradictions.Single();
        contradiction.Finding.ShouldBe("fuse");
        contradiction.Sides.Select(side => (side.Grade, side.From)).ShouldBe([("whole", "observation"), ("blown", "readings")]);
        session.ConfidenceOf("fuse-tired").ShouldBe(SmallLift.Start().ConfidenceOf("fuse-tired"), 1e-12);
    }

    [Fact]
    public void What_is_seen_while_it_works_counts_only_if_lasting_and_makes_the_fault_intermittent()
    {
        var session = SmallLift.Start();
        session.Observe(new Observation("sound", new Seen(Model.Conditions.GradeSet.Of(0))) { WhileWorking = true });
        session.Observe(new Observation("oil", new Seen(Model.Conditions.GradeSet.Of(1))) { WhileWorking = true });

        session.GradeOf("sound").ShouldBeNull();
        session.GradeOf("oil").ShouldBe("low");
        session.GradeOf("pattern").ShouldBe("intermittent");
    }

    [Fact]
    public void What_a_check_altered_tells_what_was_wrong_only_as_it_was_before()
    {
        var before = SmallLift.Start(null, ("sound", "clicks"), ("after-tap", "runs"));
        var after = SmallLift.Start(null, ("sound", "clicks"), ("after-tap", "runs"), ("sound", "runs"));

        after.GradeOf("sound").ShouldBe("runs");
        after.ConfidenceOf("brushes-worn").ShouldBe(before.ConfidenceOf("brushes-worn"));
    }

    [Fact]
    public void A_repair_in_vain_weighs_as_far_as_it_cures()
    {
        var before = SmallLift.Start(null, ("sound", "clicks"));
        var after = SmallLift.Start(null, ("sound", "clicks"), ("renew-brushes", "no-change"));

        // P(Z = brushes) times 1 - 0.9, renormalised (Bayes).
        var p = before.ConfidenceOf("brushes-worn");
        after.ConfidenceOf("brushes-worn").ShouldBe(0.1 * p / (1 - (0.9 * p)), 1e-12);
        SmallLift.Start(null, ("sound", "clicks"), ("renew-brushes", "for-a-while")).ConfidenceOf("brushes-worn").ShouldBe(p);
    }

    [Fact]
    public void A_complaint_with_shares_replaces_them_and_is_not_weighed_twice()
    {
        var session = SmallLift.Start("drips");

        // 9 : 1 : unlisted 2, nothing else observed.
        session.ConfidenceOf("oil-lost").ShouldBe(9.0 / 12, 1e-12);
        session.ConfidenceOf("fuse-tired").ShouldBe(1.0 / 12, 1e-12);
        session.ConfidenceOf("brushes-worn").ShouldBe(0);
        session.Diagnose().Unlisted!.Value.ShouldBe(2.0 / 12, 1e-12);
        session.GradeOf("oil").ShouldBe("low");
    }

    [Fact]
    public void A_parameter_has_the_value_of_its_chassis()
    {
        var other = DiagnosisEngine.Compile(SmallLift.Pack, new EngineOptions { Chassis = "SL2" }).Start();
        other.Observe("coil-volts", "12 V");

        other.GradeOf("coil-feed").ShouldBe("arrives");
        SmallLift.Start(null, ("coil-volts", "12 V")).GradeOf("coil-feed").ShouldBe("missing");
    }

    [Fact]
    public void A_reading_too_close_to_call_is_unknown_to_rules_and_a_likelihood_to_the_weighing()
    {
        // Accuracy 0.2 V is a rectangular limit: u = 0.2 / sqrt(3) = 0.1155 V. At 18.05 V the limit of 18 V is 0.433 u away,
        // and P(above) = Phi(0.433) = 0.6675 (Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1).
        var session = SmallLift.Start("dead", ("coil-volts", "18.05 V"));
        var likelihoods = new[] { 1 - 0.6675, 0.6675 };

        session.GradeOf("coil-feed").ShouldBeNull();
        session.ConfidenceOf("wire-broken").ShouldBeGreaterThan(0);

        // Odds of the broken wire against the open relay, which differ in the coil's feed only: 3 : 3 before, then by the likelihoods.
        const double Background = 0.01;
        const double Shown = 0.95;
        double Likelihood(double missing) => (likelihoods[0] * missing) + (likelihoods[1] * (1 - missing));
        var expected = Likelihood(1 - ((1 - Background) * (1 - Shown))) / Likelihood(Background);
        (session.ConfidenceOf("wire-broken") / session.ConfidenceOf("relay-open")).ShouldBe(expected, 0.02);
    }
}
