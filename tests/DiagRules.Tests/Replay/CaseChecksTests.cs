using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Replay;
using DiagRules.TestSupport;

namespace DiagRules.Tests.Replay;

/// <summary>What playing recorded cases shows about the cases.</summary>
public sealed class CaseChecksTests
{
    [Fact]
    public void PackWithoutCases_HasNothingToPlay() => Played(PackText.Demo().Load().Require()).ShouldBeEmpty();

    [Fact]
    public void PackWithoutCausesAndCases_HasNothingToPlay() => Played(PackText.Of("").Load().Require()).ShouldBeEmpty();

    [Fact]
    public void ReadingThatWaitsForAnother_IsNotIdle() =>
        Check("  - fuse-load: 0.1 V\n  - fuse-feed: 12.6 V\nconfirmed: [fuse-fatigued]\n").ShouldBeEmpty();

    [Fact]
    public void ReadingWhoseFellowIsMissing_IsIdle() =>
        Check("  - pump-sound: silent\n  - fuse-load: 0.1 V\nconfirmed: [fuse-fatigued]\n").ShouldBe(
            ["DR6010 Case 'demo-1': 'fuse-load' moved nothing; ranking, advice and cautions are the same without it. Let a cause show it, or leave it out."]);

    [Fact]
    public void SayingTheSameTwiceInOtherWords_IsNotIdle() =>
        Check("  - fuse-feed: 12.6 V\n  - fuse-load: 0.1 V\n  - pump-sound: silent\n  - pump-fuse: blown\nconfirmed: [fuse-fatigued]\n").ShouldBe(
            ["DR6010 Case 'demo-1': 'pump-fuse' moved nothing; ranking, advice and cautions are the same without it. Let a cause show it, or leave it out."]);

    [Theory]
    [InlineData("pump-fuse: cannot-tell")]
    [InlineData("tried: renew-brushes, result: for-a-while")]
    [InlineData("pump-sound: runs, at: 2026-03-01")]
    public void WhatIsOnlyKeptOnRecord_IsNotIdle(string observation) =>
        Check($"  - {{ {observation} }}\n  - pump-sound: silent\nconfirmed: [fuse-fatigued]\n").ShouldBeEmpty();

    [Fact]
    public void ComplaintAgainstReadings_IsAContradictionAtTheCase()
    {
        var pack = Load("complaint: dead\nobservations:\n  - fuse-feed: 12.6 V\n  - fuse-load: 12.5 V\nconfirmed: [brushes-worn]\n", "complaints: { dead: { title: Dead, means: { pump-fuse: blown } } }\n");

        var problem = Played(pack).Single(problem => problem.Code == "DR6006");
        problem.Message.ShouldBe("Case 'demo-1' contradicts itself on 'pump-fuse', which is 'blown' by the complaint and 'whole' by the readings; it is left out of the weighing. Mend what was noted wrongly, or the conditions.");
        problem.Place.ShouldBe(pack.Cases[0].Place);
    }

    [Theory]
    [InlineData("brushes-worn", 1)]
    [InlineData("unlisted", 0)]
    public void ObservationsThatExcludeAll_AreReportedWhereAListedCauseWasBehindThem(string confirmed, int problems)
    {
        var pack = PackText.Demo(
                ("{ blown: 0.98 }, pump-sound: { silent: 0.9 }", "{ blown: 1 }, pump-sound: { silent: 0.9 }"),
                ("    background: { blown: 0.002 }\n", ""),
                ("    background: { clicks: 0.01, silent: 0.01 }\n", ""),
                ("{ clicks: 0.2, silent: 0.5 }", "{ clicks: 0.2 }"))
            .With("cases/demo.yaml", $"case: demo-1\npack: demo\nrecorded: 2026-03-02\nobservations:\n  - pattern: every-time\n  - pump-sound: silent\n  - pump-fuse: whole\nconfirmed: [{confirmed}]\n")
            .Load().Require();

        var found = Played(pack).Where(problem => problem.Code == "DR6011").ToList();

        found.Count.ShouldBe(problems);
        found.ShouldAllBe(problem => problem.Message == "Case 'demo-1': 'pump-sound' and 'pump-fuse' together leave no listed cause possible. Let the confirmed cause show them, or give the grades a small background.");
    }

    [Fact]
    public void GradeThatNoCauseShows_IsReportedAsLeftOut()
    {
        var pack = PackText.Demo(("grades: [runs, clicks, silent]", "grades: [runs, clicks, silent, howls]"))
            .With("cases/demo.yaml", "case: demo-1\npack: demo\nrecorded: 2026-03-02\nobservations:\n  - pump-sound: howls\nconfirmed: [brushes-worn]\n")
            .Load().Require();

        var problem = Played(pack).ShouldHaveSingleItem();
        (problem.Code, problem.Place).ShouldBe(("DR6011", pack.Cases[0].Observations[0].Place));
        problem.Message.ShouldBe("Case 'demo-1': 'pump-sound: howls' cannot be under any listed cause together with the rest, and the weighing leaves it out. Say which cause shows it, or give its grade a small background.");
    }

    [Fact]
    public void PackThatAcceptsAWarning_HasItsReason() =>
        Played(Load("observations:\n  - fuse-load: 0.1 V\nconfirmed: [fuse-fatigued]\n", "accepts: { DR6010: \"kept as measured\" }\n"))
            .ShouldHaveSingleItem().Accepted.ShouldBe("kept as measured");

    [Fact]
    public void ObservationThatIsNotThereOnTheChassis_IsReportedAtItsPlace()
    {
        var text = PackText.Demo(("systems:", "chassis: [S1, S2]\nsystems:"), ("causes:\n", "  lamp: { question: Lit, grades: [yes, no], only: [S2], background: { no: 0.1 } }\ncauses:\n"))
            .With("cases/demo.yaml", "case: demo-1\npack: demo\nrecorded: 2026-03-02\nchassis: S1\nobservations:\n  - lamp: no\nconfirmed: [fuse-fatigued]\n");

        var problem = Played(text.Load().Require()).ShouldHaveSingleItem();
        problem.ToString().ShouldBe("cases/demo.yaml(6,5): error DR1113: Case 'demo-1': 'lamp' is not there on chassis 'S1'; it is for S2.");
    }

    private static ImmutableArray<Problem> Played(Pack pack) => CaseChecks.Run(pack, TestContext.Current.CancellationToken);

    private static IEnumerable<string> Check(string rest) => Played(Load("observations:\n" + rest)).Select(problem => $"{problem.Code} {problem.Message}");

    private static Pack Load(string rest, string head = "") =>
        PackText.Demo(("systems:", head + "systems:")).With("cases/demo.yaml", "case: demo-1\npack: demo\nrecorded: 2026-03-02\n" + rest).Load().Require();
}
