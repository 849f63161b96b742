using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Packs.Tests.Loading;
using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Binding;

/// <summary>What the texts of a pack turn into.</summary>
public class EntryTests
{
    private static readonly Pack Lift = new PackLoader().Load(ExamplePack.Folder).Require();

    [Fact]
    public void Nodes_AreCausesThenEffectsThenFindings_EachByItsId()
    {
        Lift.Nodes.Select(node => node.Node).ShouldBe(Enumerable.Range(0, Lift.Nodes.Length));
        Lift.Causes.Select(cause => cause.Index).ShouldBe(Lift.Causes.Select(cause => cause.Node));
        Lift.Nodes.ShouldBe([.. Lift.Causes, .. Lift.Effects, .. Lift.Findings]);
        Lift.Findings.Select(finding => finding.Id).ShouldBe(Lift.Findings.Select(finding => finding.Id).Order(StringComparer.Ordinal));
        Lift.Causes.SkipWhile(cause => cause.Precondition is null).ShouldAllBe(cause => cause.Precondition != null);
    }

    [Fact]
    public void Index_IsThePositionInTheSection()
    {
        foreach (var section in new IEnumerable<Entry>[] { Lift.Readings, Lift.Findings, Lift.Effects, Lift.Causes, Lift.Parameters, Lift.Rules, Lift.Checks, Lift.Repairs, Lift.Hazards, Lift.Access })
        {
            section.Select(entry => entry.Index).ShouldBe(Enumerable.Range(0, section.Count()));
        }
    }

    [Fact]
    public void Shows_FillsUpWithTheFirstGrade()
    {
        var shown = Shown("motor-brushes-worn", "power-unit");

        shown.ByGrade[0].ShouldBe([1, 0, 0, 0, 0, 0, 0]);
        shown.ByGrade[1].Select(part => Math.Round(part, 12)).ShouldBe([0.1, 0, 0.15, 0, 0, 0.75, 0]);
    }

    [Fact]
    public void ShowsByGrade_HasARowForEachGradeOfTheParent()
    {
        var shown = Shown("pump-flow", "lift-up");

        shown.ByGrade.Select(row => Math.Round(row[0], 12)).ShouldBe([1, 0.1, 0.02]);
    }

    [Fact]
    public void Intermittent_ShowsInThePattern()
    {
        Shown("motor-brushes-worn", Finding.Pattern).ByGrade[1][1].ShouldBe(0.7);
        Shown("motor-seized", Finding.Pattern).ByGrade[1][1].ShouldBe(0.02, "hardly-ever is the default");
    }

    [Fact]
    public void Pattern_IsBuiltInLastingAndAsked()
    {
        var pattern = Lift.Find<Finding>(Finding.Pattern)!;

        pattern.Grades.ShouldBe(["every-time", "intermittent"]);
        pattern.IsLasting.ShouldBeTrue();
        Lift.FindCheck(Finding.Pattern)!.IsQuestion.ShouldBeTrue();
    }

    [Fact]
    public void Pattern_TakesTheTextsOfThePack()
    {
        var pack = PackText.Of("findings:\n  pattern: { question: Kommt und geht es? }").Load().Require();

        pack.FindCheck(Finding.Pattern)!.Title.ShouldBe("Kommt und geht es?");
        pack.Find<Finding>(Finding.Pattern)!.Grades.Length.ShouldBe(2);
    }

    [Fact]
    public void ShareOfATemplate_IsDividedAmongItsCopies()
    {
        Lift.Find<Cause>("ram-left-leaks")!.Share.ShouldBe(4.5);
        Lift.Find<Cause>("ram-right-leaks")!.Share.ShouldBe(4.5);
    }

    [Fact]
    public void Copy_HasTheWordsAndIdsOfItsMember()
    {
        var cause = Lift.Find<Cause>("burst-valve-left-tripped")!;

        cause.Title.ShouldBe("Hose-burst valve of the left lift ram shut");
        cause.Repairs.ShouldBe([new Cure("reset-burst-valve-left", 1)]);
        cause.Shows.Select(shown => Lift.Nodes[shown.Child].Id).ShouldContain("hangs-left");
        cause.Place.Member.ShouldBe("left");
    }

    [Fact]
    public void SetInAListOrAsAKey_StandsForAllMembers()
    {
        Lift.FindCheck("look-for-oil")!.Gives.ShouldBe(["ram-left-wet", "ram-right-wet", "hose-wet", "tilt-ram-wet"]);
        Lift.Find<Cause>("arm-bent")!.Shows.Select(shown => Lift.Nodes[shown.Child].Id).ShouldBe(["hangs-left", "hangs-right", "lift-down", "lift-up", "movement", "pattern"], ignoreOrder: true);
    }

    [Fact]
    public void MemberWrittenOut_OverridesItsCopyKeyByKey()
    {
        var pack = PackText.WithHead(
            PackText.Head + "sets: { side: { left: left, right: right } }\ncauses:\n  ram-$side-leaks: { title: The $side ram leaks, share: 8, reason: Age. }\n  ram-left-leaks: { share: 6 }\n").Load().Require();

        pack.Causes.Select(cause => (cause.Id, cause.Title, cause.Share, cause.Reason))
            .ShouldBe([("ram-left-leaks", "The left ram leaks", 6d, "Age."), ("ram-right-leaks", "The right ram leaks", 4d, "Age.")]);
    }

    [Fact]
    public void ShareOfASetInAComplaint_IsThatOfAllTogether()
    {
        var pack = PackText.WithHead(
            PackText.Head + "sets: { side: { left: left, right: right } }\ncauses:\n  ram-$side-leaks: { title: x, share: 8 }\ncomplaints:\n  drips: { title: x, shares: { ram-$side-leaks: 54, unlisted: 8 } }\n").Load().Require();

        var complaint = pack.Complaints.ShouldHaveSingleItem();
        complaint.Shares!.Values.ShouldBe([27, 27]);
        complaint.Unlisted.ShouldBe(8);
    }

    [Fact]
    public void QuestionThatNoCheckGives_IsACheckOfItsOwn()
    {
        var question = Lift.FindCheck("noise")!;

        (question.IsQuestion, question.Minutes, question.Skill).ShouldBe((true, 1, Skill.Owner));
        question.SkipIf.ShouldBeOfType<GradeTest>();
        Lift.FindCheck("main-fuse").ShouldBeNull("a check gives it");
    }

    [Fact]
    public void RestoreOfAPrecondition_IsARepair()
    {
        var restore = Lift.FindRepair("cab-switch-off")!;

        (restore.IsRestore, restore.Minutes, restore.Skill, restore.Title).ShouldBe((true, 2, Skill.Owner, "Switch the lift on in the cab; the lamp beside it lights."));
        Lift.Find<Cause>("cab-switch-off")!.Repairs.ShouldBe([new Cure("cab-switch-off", 1)]);
    }

    [Fact]
    public void Costs_AreMoneyOrMinutesWorth()
    {
        (Lift.LabourPerHour, Lift.Currency, Lift.SpecialistCost.Money).ShouldBe((84d, "EUR", 900d));
        Lift.MinutesWorth(Lift.FindRepair("clean-terminals")!.Cost).ShouldBe(2 / 84d * 60, 1e-12);
    }

    [Fact]
    public void Parameter_HasItsValueOnEachChassis()
    {
        var load = Lift.Find<Parameter>("rated-load")!;

        (load.On("LD4").Value, load.On("LD4-S").Value, load.Value.Unit.Symbol).ShouldBe((750d, 1000d, "kg"));
    }

    [Fact]
    public void Bands_HaveGradesInRisingValue()
    {
        var bands = Lift.Find<Finding>("battery-rest")!.Bands!;

        bands.Of.Id.ShouldBe("battery-rest-volts");
        bands.Grades.ShouldBe([2, 1, 0]);
        bands.Limits.Cast<LiteralTerm>().Select(limit => limit.Si).ShouldBe([24.2, 24.8]);
    }

    [Fact]
    public void Table_IsWrittenOutForEveryCombination_LastParentFastest()
    {
        var pack = PackText.Of("effects:\n  a: { grades: [no, yes] }\n  b: { grades: [no, some, yes] }\nfindings:\n  n: { title: x, grades: [low, high], given: [a, b], table: [{ if: { a: yes, b: some or worse }, then: { high: 0.7 } }, { otherwise: { high: 0.1 } }] }").Load().Require();

        var table = pack.Find<Finding>("n")!.Table!;
        table.Parents.ShouldBe([pack.Find<Effect>("a")!.Node, pack.Find<Effect>("b")!.Node]);
        table.Rows.Select(row => row[1]).ShouldBe([0.1, 0.1, 0.1, 0.1, 0.7, 0.7]);
    }

    [Fact]
    public void AcceptedWarning_IsKeptWithItsReason()
    {
        var result = PackText.Demo(("minutes: 60, verify-by: [pump-sound]", "minutes: 60, accepts: { DR5006: \"seen at once\" }")).Load();

        result.Problems.ShouldHaveSingleItem().Accepted.ShouldBe("seen at once");
    }

    [Fact]
    public void KeysOfTheHost_AreKept()
    {
        var pack = PackText.Of("access:\n  a: { title: x, x-shop: { bay: [1, 2] } }").Load().Require();

        pack.Find<Access>("a")!.HostKeys["x-shop"].Members["bay"].Items.Select(item => item.Text).ShouldBe(["1", "2"]);
    }

    private static ShownGrades Shown(string parent, string child)
    {
        var node = Lift.Find<Graded>(child)!.Node;
        return Lift.Find<Graded>(parent)!.Shows.Single(shown => shown.Child == node);
    }
}
