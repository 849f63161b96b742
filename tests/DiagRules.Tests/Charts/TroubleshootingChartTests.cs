using DiagRules.Charts;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Results;

namespace DiagRules.Tests.Charts;

public sealed class TroubleshootingChartTests
{
    public static TheoryData<string, string?> Packs => new()
    {
        { ChartSamples.Seen, null },
        { ChartSamples.Seen, "dead" },
        { ChartSamples.Measured, null },
    };

    [Theory]
    [MemberData(nameof(Packs))]
    public void Every_way_ends(string pack, string? complaint)
    {
        var chart = ChartSamples.Draw(pack, complaint);

        foreach (var box in chart.Boxes)
        {
            box.Branches.ShouldNotBeEmpty();
            box.Branches.ShouldAllBe(branch => (branch.Next == null) != (branch.End == null));
            box.Branches.ShouldAllBe(branch => branch.Next == null || (branch.Next > 0 && branch.Next <= chart.Boxes.Length));
        }

        Ways(chart, 1, []).ShouldNotBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Packs))]
    public void The_answers_of_a_box_cover_everything_and_their_probabilities_add_up_to_1(string pack, string? complaint)
    {
        var chart = ChartSamples.Draw(pack, complaint);
        var known = ChartSamples.Engine(pack).Pack;

        foreach (var box in chart.Boxes)
        {
            box.Branches.Sum(branch => branch.Probability).ShouldBe(1, 1e-9);
            foreach (var asked in box.Branches.SelectMany(branch => branch.Answers).Where(answer => answer.Finding.Length > 0).GroupBy(answer => answer.Finding))
            {
                asked.Select(answer => answer.Grade).ShouldBe(known.Find<Graded>(asked.Key)!.Grades, ignoreOrder: true);
            }
        }
    }

    [Fact]
    public void Boxes_are_numbered_in_reading_order_and_all_are_reached()
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen, "dead");

        chart.Boxes.Select(box => box.Number).ShouldBe(Enumerable.Range(1, chart.Boxes.Length));
        Ways(chart, 1, []).SelectMany(way => way.Select(step => step.Box.Number)).Distinct().Order().ShouldBe(chart.Boxes.Select(box => box.Number));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("dead")]
    public void Each_box_is_what_a_session_proposes_after_the_answers_on_the_way(string? complaint)
    {
        var engine = ChartSamples.Engine(ChartSamples.Seen);
        var chart = TroubleshootingChart.Draw(engine.Start(new SessionOptions { Complaint = complaint }), cancellationToken: TestContext.Current.CancellationToken);

        foreach (var way in Ways(chart, 1, []))
        {
            var session = engine.Start(new SessionOptions { Complaint = complaint });
            foreach (var (box, branch) in way)
            {
                var diagnosis = session.Diagnose();
                diagnosis.Next[0].Id.ShouldBe(box.Step);
                diagnosis.Deferred.ShouldNotContain(deferral => deferral.Id == box.Step);
                diagnosis.Withheld.ShouldNotContain(step => step.Id == box.Step);
                Observe(session, box, branch);
            }

            if (way[^1].Branch.End == ChartEnd.Specialist)
            {
                session.Diagnose().Next[0].Kind.ShouldBe(StepKind.Specialist);
            }
        }
    }

    [Fact]
    public void Probabilities_of_reaching_a_box_follow_from_the_branches()
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen, "dead");

        foreach (var box in chart.Boxes.Skip(1))
        {
            var into = chart.Boxes.Sum(from => from.Branches.Where(branch => branch.Next == box.Number).Sum(branch => from.Reached * branch.Probability));
            box.Reached.ShouldBe(into, 1e-9);
        }

        var ended = chart.Boxes.Sum(box => box.Reached * box.Branches.Where(branch => branch.End is not null).Sum(branch => branch.Probability));
        ended.ShouldBe(1, 1e-9);
    }

    [Fact]
    public void A_deferred_repair_waits_for_the_check_that_lifts_the_deferral()
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen, options: ChartSamples.Whole);

        var fuses = Ways(chart, 1, []).Where(way => way.Any(step => step.Box.Step == "renew-fuse" && Saw(way, "lamp", "off"))).ToList();
        fuses.ShouldNotBeEmpty();
        fuses.ShouldAllBe(way => way.FindIndex(step => step.Box.Step == "tap-motor") < way.FindIndex(step => step.Box.Step == "renew-fuse") && way.Exists(step => step.Box.Step == "tap-motor"));
    }

    [Fact]
    public void A_check_that_its_skip_if_excludes_is_on_no_way()
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen, options: ChartSamples.Whole);

        Ways(chart, 1, []).Where(way => Saw(way, "sound", "silent"))
            .ShouldAllBe(way => way.FindIndex(step => step.Box.Step == "tap-motor") < way.FindIndex(step => step.Box.Step == "sound"));
    }

    [Fact]
    public void A_repair_shows_parts_torque_and_proof_and_what_opens_first()
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen, "dead", ChartSamples.Whole);

        var step = chart.Steps.Single(step => step.Id == "renew-fuse");
        step.Parts.ShouldBe(["fuse 100 A"]);
        step.Fasteners.ShouldBe(["nuts M8, 13 mm across flats, tighten to 12 N.m"]);
        step.Proofs.Single().Check.ShouldBe("Look at the lamp");
        step.Proofs.Single().Expected.ShouldBe(["Lamp on the box: on"]);
        step.Hazards.ShouldBe(["unfused"]);
        chart.Hazards.Select(hazard => hazard.Hazard).ShouldBe(["unfused", "hot-motor"]);
        chart.Steps.Single(access => access.Id == "cover-off").Instructions.ShouldBe(["Four bolts."]);
        Ways(chart, 1, []).ShouldAllBe(way => way.Count(taken => taken.Box.Opens.Contains("Cover off")) <= 1);
    }

    [Fact]
    public void Findings_of_one_check_stand_in_one_box_with_their_limits()
    {
        var chart = ChartSamples.Draw(ChartSamples.Measured, options: ChartSamples.Whole);

        var box = chart.Boxes[0];
        box.Step.ShouldBe("measure-all");
        var answers = box.Branches.SelectMany(branch => branch.Answers).ToDictionary(answer => (answer.Finding, answer.Grade), answer => answer.Limits);
        answers[("flow", "low")].ShouldBe("current below 20 A");
        answers[("flow", "normal")].ShouldBe("current from 20 A, up to 90 A");
        answers[("flow", "high")].ShouldBe("current above 90 A");
        box.Readings.ShouldContain(new ChartReading("current", "Amperes in the cable", "A"));
        var all = chart.Boxes.Where(each => each.Step == "measure-all").SelectMany(each => each.Branches).SelectMany(branch => branch.Answers).ToList();
        all.ShouldContain(answer => answer.Finding == "supply" && answer.Grade == "weak" && answer.Limits == "feed below 11 V");
        all.ShouldContain(answer => answer.Finding == "fuse" && answer.Grade == "blown" && answer.Limits == "drop > 0.3 V");
        chart.Boxes.ShouldContain(each => each.IsSameCheck || each.Branches.Any(branch => branch.IsOtherwise));
    }

    [Fact]
    public void A_check_is_done_once_on_every_way()
    {
        var chart = ChartSamples.Draw(ChartSamples.Measured, options: ChartSamples.Whole);

        Ways(chart, 1, []).ShouldAllBe(way => way.Where(step => !step.Box.IsSameCheck).GroupBy(step => step.Box.Step).All(same => same.Count() == 1));
    }

    [Fact]
    public void What_a_rule_makes_of_a_value_alone_stands_beside_the_step_it_can_keep_back()
    {
        var chart = ChartSamples.Draw(ChartSamples.Measured, options: ChartSamples.Whole);

        var repair = chart.Boxes.First(box => box.Step == "exchange-motor");
        repair.NotWhile.ShouldBe(["temperature > 60 degC (It burns.)"]);
        Ways(chart, 1, []).Where(way => way.Exists(step => step.Box.Step == "exchange-motor"))
            .ShouldAllBe(way => way.Exists(step => step.Box.Step == "feel-motor"));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(6)]
    public void No_more_places_are_planned_than_allowed_and_what_is_left_is_said(int places)
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen, "dead", new ChartOptions { Places = places });

        chart.Boxes.Count(box => !box.IsSameCheck).ShouldBeLessThanOrEqualTo(places);
        chart.Beyond.ShouldBeGreaterThan(0);
        chart.Boxes.SelectMany(box => box.Branches).ShouldContain(branch => branch.End == ChartEnd.Beyond);
    }

    [Fact]
    public void No_way_is_longer_than_allowed()
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen, "dead", new ChartOptions { Depth = 3, Probability = 0 });

        Ways(chart, 1, []).Max(way => way.Count(step => !step.Box.IsSameCheck)).ShouldBe(3);
    }

    [Fact]
    public void The_owner_gets_a_chart_of_what_the_owner_can_do()
    {
        var session = ChartSamples.Engine(ChartSamples.Seen).Start(new SessionOptions { Complaint = "dead", Skill = Skill.Owner });

        TroubleshootingChart.Draw(session, cancellationToken: TestContext.Current.CancellationToken).Boxes.ShouldAllBe(box => box.Skill == Skill.Owner);
    }

    [Fact]
    public void Where_a_specialist_costs_nothing_the_chart_is_one_box()
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen.Replace("specialist-cost: 400", "specialist-cost: 0", StringComparison.Ordinal));

        chart.Boxes.Single().Kind.ShouldBe(StepKind.Specialist);
        chart.ToText().ShouldContain("Give the job to a specialist");
    }

    [Fact]
    public void Drawing_leaves_the_session_alone_and_starts_from_where_it_stands()
    {
        var session = ChartSamples.Engine(ChartSamples.Seen).Start(new SessionOptions { Complaint = "dead" });
        session.Observe("sound", "clicks");
        var before = session.Save();

        var chart = TroubleshootingChart.Draw(session, cancellationToken: TestContext.Current.CancellationToken);

        session.Save().ShouldBe(before);
        chart.Known.ShouldBe(["What do you hear?: clicks"]);
        chart.Boxes.ShouldNotContain(box => box.Step == "sound");
    }

    [Fact]
    public void The_same_session_gives_the_same_chart()
    {
        var first = ChartSamples.Draw(ChartSamples.Measured);
        var second = ChartSamples.Draw(ChartSamples.Measured);

        second.ToText().ShouldBe(first.ToText());
        second.ToSvg().ShouldBe(first.ToSvg());
        second.ToHtml().ShouldBe(first.ToHtml());
    }

    [Fact]
    public void Options_out_of_range_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => ChartSamples.Draw(ChartSamples.Seen, options: new ChartOptions { Depth = 0 }));
        Should.Throw<ArgumentOutOfRangeException>(() => ChartSamples.Draw(ChartSamples.Seen, options: new ChartOptions { Places = 0 }));
        Should.Throw<ArgumentOutOfRangeException>(() => ChartSamples.Draw(ChartSamples.Seen, options: new ChartOptions { Probability = double.NaN }));
    }

    [Fact]
    public void A_cancelled_token_ends_the_drawing()
    {
        var session = ChartSamples.Engine(ChartSamples.Seen).Start();

        Should.Throw<OperationCanceledException>(() => TroubleshootingChart.Draw(session, cancellationToken: new CancellationToken(canceled: true)));
    }

    /// <summary>Every way through a chart from a box to an end; a chart with a circle would never come back from this.</summary>
    private static IEnumerable<List<(ChartBox Box, ChartBranch Branch)>> Ways(TroubleshootingChart chart, int number, List<(ChartBox, ChartBranch)> before)
    {
        before.Count.ShouldBeLessThan(100);
        var box = chart.Boxes[number - 1];
        foreach (var branch in box.Branches)
        {
            List<(ChartBox, ChartBranch)> way = [.. before, (box, branch)];
            if (branch.Next is not { } next)
            {
                yield return way;
                continue;
            }

            foreach (var longer in Ways(chart, next, way))
            {
                yield return longer;
            }
        }
    }

    private static bool Saw(List<(ChartBox Box, ChartBranch Branch)> way, string finding, string grade) =>
        way.Exists(step => step.Branch.Answers.Any(answer => answer.Finding == finding && answer.Grade == grade));

    private static void Observe(DiagnosisSession session, ChartBox box, ChartBranch branch)
    {
        var result = box.Kind == StepKind.Repair
            ? session.Observe(new Observation(box.Step, new Tried(branch.End == ChartEnd.Cured ? TriedResult.Cured : TriedResult.NoChange)))
            : session.Observe(branch.Answers[0].Finding, branch.Answers[0].Grade);
        result.IsUsed.ShouldBeTrue();
    }
}
