using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Packs.Tests.Loading;
using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Cases;

/// <summary>What recorded cases turn into.</summary>
public class CaseTests
{
    private static readonly Pack Lift = new PackLoader().Load(ExamplePack.Folder).Require();

    [Fact]
    public void Case_HasItsHeadAndItsObservationsInOrder()
    {
        var recorded = Case("ld4-001");

        (recorded.Recorded, recorded.Chassis, recorded.Complaint, recorded.Said).ShouldBe(("2026-01-14", "LD4", "will-not-lift", "Clicks under the bumper, nothing moves"));
        recorded.Observations.Select(observation => observation.Id)
            .ShouldBe(["power-unit", "stood-long", "battery-rest-volts", "contactor-in-volts", "contactor-out-volts", "coil-volts"]);
        recorded.Confirmed.ShouldBe(["contactor-contacts-burnt"]);
        recorded.SeenOnOpening.ShouldHaveSingleItem().Value.ShouldBe(new Seen(GradeSet.Of(1)));
        (recorded.Repair, recorded.Minutes, recorded.Expect.Top, recorded.Expect.Confidence).ShouldBe(("renew-contactor", 62d, 1, 0.6));
    }

    [Fact]
    public void Observation_HasObserverTrustAndWhile()
    {
        var observations = Case("ld4-002").Observations;

        (observations[0] with { Place = default }).ShouldBe(new Observation("power-unit", new Seen(GradeSet.Of(6))) { By = Skill.Owner, Trust = Observation.Doubtful });
        observations[1].Value.ShouldBeOfType<CannotTell>();
        observations[2].WhileWorking.ShouldBeTrue();
        observations[3].Value.ShouldBeOfType<Measured>().Quantity.Si.ShouldBe(24.6);
    }

    [Fact]
    public void OpenAnswer_LeavesItsGradesOpen() => Case("ld4-009").Observations[0].Value.ShouldBe(new Seen(GradeSet.Of(5) | GradeSet.Of(6)));

    [Fact]
    public void TriedRepair_IsAnObservation() =>
        (Case("ld4-003").Observations[2] with { Place = default }).ShouldBe(new Observation("renew-contactor", new Tried(TriedResult.NoChange)) { By = Skill.Workshop });

    [Fact]
    public void Damage_IsKeptByGrade() => Case("ld4-007").Damaged.ShouldBe([new NodeGrades(Lift.Find<Finding>("main-fuse")!.Node, GradeSet.Of(1))]);

    [Fact]
    public void ProbableVerdict_IsKept() => Case("ld4-006").IsProbable.ShouldBeTrue();

    [Fact]
    public void Expectation_IsAmongTheFirstThreeUnlessStated() => Case("ld4-011").Expect.ShouldBe(new Expectation());

    [Fact]
    public void CaseWithAnError_IsRefusedAlone()
    {
        var result = PackText.Demo().With("cases/all.yaml", """
            case: good
            pack: demo
            recorded: 2026-03-02
            observations: [{ pump-sound: clicks }]
            confirmed: [brushes-worn]
            ---
            case: bad
            pack: demo
            recorded: 2026-03-02
            observations: [{ pump-sound: clicks }]
            confirmed: [brushes-worn]
            verdict: probable
            verdict: confirmed
            """).Load();

        result.Require().Cases.ShouldHaveSingleItem().Id.ShouldBe("good");
        result.Problems.ShouldContain(problem => problem.Code == "DR1003");
    }

    [Fact]
    public void CaseWithAMisspeltKey_IsRefusedAlone()
    {
        var result = PackText.Demo().With("cases/bad.yaml", "case: bad\npack: demo\nrecorded: 2026-03-02\nobservations: [{ pump-sound: clicks }]\nconfirmed: [brushes-worn]\nminuts: 3\n").Load();

        result.Require().Cases.ShouldBeEmpty();
    }

    [Fact]
    public void UnreadableCaseFile_DoesNotRefuseThePack()
    {
        var result = PackText.Demo().With("cases/bad.yaml", "case: [bad\n").Load();

        result.Pack.ShouldNotBeNull();
        result.Problems.ShouldHaveSingleItem().Code.ShouldBe("DR1001");
    }

    private static RecordedCase Case(string id) => Lift.Cases.Single(recorded => recorded.Id == id);
}
