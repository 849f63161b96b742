using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Cases;

/// <summary>Recorded cases.</summary>
public class CaseProblemTests
{
    [Fact]
    public void ObservationWithTwoIds_ReportsDR6001() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - { pump-sound: clicks, «pump-fuse»: whole }
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR6001",
            "'pump-sound' and 'pump-fuse' stand in one observation; write an item for each, in the order they became known.");

    [Fact]
    public void ObservationsApart_DoesNotReportDR6001() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - { pump-sound: clicks, by: owner }
              - { pump-fuse: whole, by: workshop }
            confirmed: [brushes-worn]
            """).ShouldNotReport("DR6001");

    [Fact]
    public void ObservationWithoutId_ReportsDR6001() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - «»{ by: owner }
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR6001",
            "'observations' has an item without an id; write for example '{ pump-sound: clicks-only, by: owner }'.");

    [Fact]
    public void ValueOfAnotherUnit_ReportsDR6002() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - fuse-feed: «12 A»
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR6002",
            "'fuse-feed' is a voltage (V), and '12 A' is a current (A); it takes a value such as '5 V'.");

    [Fact]
    public void ValueOfTheSameDimension_DoesNotReportDR6002() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - fuse-feed: 12000 mV
            confirmed: [brushes-worn]
            """).ShouldNotReport("DR6002");

    [Fact]
    public void ImplausibleValue_ReportsDR6002() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - fuse-feed: «120 V»
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR6002",
            "'120 V' is outside what is plausible for 'fuse-feed' (0 V .. 32 V); it is taken for a slip of the pen (unit, decimal point), kept on record and used for nothing.");

    [Fact]
    public void UnknownGradeObserved_ReportsDR2008() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: «clack»
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR2008",
            "Finding 'pump-sound' has no grade 'clack'; its grades are 'runs', 'clicks' and 'silent'. Did you mean 'clicks'?");

    [Fact]
    public void OpenAnswer_DoesNotReportDR2008() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks or silent
            confirmed: [brushes-worn]
            """).ShouldNotReport("DR2008");

    [Fact]
    public void ConfirmedIsNoCause_ReportsDR6003() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            confirmed: [«brushes-wore»]
            """).ShouldReport(
            "DR6003",
            "No cause 'brushes-wore' in the pack; name a cause or precondition, or 'unlisted'. Did you mean 'brushes-worn'?");

    [Fact]
    public void ConfirmedUnlisted_DoesNotReportDR6003() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            confirmed: [unlisted]
            """).ShouldNotReport("DR6003");

    [Fact]
    public void ConfirmedIsAFinding_ReportsDR6003() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            confirmed: [«pump-fuse»]
            """).ShouldReport(
            "DR6003",
            "'pump-fuse' is a finding and no cause; name a cause or precondition, or 'unlisted'.");

    [Fact]
    public void CaseOfAnotherPack_ReportsDR6004() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: «other»
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR6004",
            "'other' is another pack than 'demo', in which this case lies; move the case, or mend 'pack'.");

    [Fact]
    public void CaseIdTwice_ReportsDR6004() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            confirmed: [brushes-worn]
            ---
            case: «demo-1»
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR6004",
            "'demo-1' is the id of a case in cases/demo.yaml(1,7) already; give this one another.");

    [Fact]
    public void ObservationAnswersTheCase_ReportsDR6005() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
              - «brushes-worn»: present
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR6005",
            "'brushes-worn' is what the case confirms, so observing it leaves nothing to find; move it to 'seen-on-opening'.");

    [Fact]
    public void SeenOnOpening_DoesNotReportDR6005() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            seen-on-opening: [{ brushes-worn: present }]
            confirmed: [brushes-worn]
            """).ShouldNotReport("DR6005");

    [Fact]
    public void TriedWithoutResult_ReportsDR2002() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - { «tried»: renew-fuse }
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR2002",
            "'tried' has no 'result'; write for example 'result: no-change'.");

    [Fact]
    public void TriedWithResult_DoesNotReportDR2002() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - { tried: renew-fuse, result: no-change }
            confirmed: [brushes-worn]
            """).ShouldNotReport("DR2002");

    [Fact]
    public void CaseWithoutConfirmed_ReportsDR2002() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: «demo-1»
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            """).ShouldReport(
            "DR2002",
            "'demo-1' has no 'confirmed', which a case must have; write for example 'confirmed: [motor-brushes-worn]'.");

    [Fact]
    public void DateThatIsNone_ReportsDR1009() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: «2026-02-30»
            observations:
              - pump-sound: clicks
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR1009",
            "'recorded' is '2026-02-30'; it takes a day that the calendar has, year first (ISO 8601), such as '2026-03-02'.");

    [Fact]
    public void MisspeltCaseKey_ReportsDR2001() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            confirmed: [brushes-worn]
            «verdikt»: probable
            """).ShouldReport(
            "DR2001",
            "'verdikt' is no key of a case. Did you mean 'verdict'? Keys here: case, pack, recorded, chassis, complaint, said, observations, seen-on-opening, confirmed, damaged, verdict, repair, minutes, expect, source.");

    [Fact]
    public void UnknownVerdict_ReportsDR1009() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            confirmed: [brushes-worn]
            verdict: «maybe»
            """).ShouldReport(
            "DR1009",
            "'verdict' is 'maybe'; it takes 'confirmed' or 'probable'.");

    [Fact]
    public void UnknownComplaint_ReportsDR2004() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            complaint: «wont-lift»
            observations:
              - pump-sound: clicks
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR2004",
            "No complaint 'wont-lift'.");

    [Fact]
    public void CaseOfAnUndeclaredChassis_ReportsDR1112() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            chassis: «LD9»
            observations:
              - pump-sound: clicks
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR1112",
            "No chassis 'LD9'; pack.yaml has no 'chassis'.");

    [Fact]
    public void CauseWithoutACase_ReportsDR6009() =>
        PackText.Demo().With("cases/demo.yaml", """
            case: demo-1
            pack: demo
            recorded: 2026-03-02
            observations:
              - pump-sound: clicks
            confirmed: [brushes-worn]
            """).ShouldReport(
            "DR6009",
            "'demo': 2 causes have no recorded case (fuse-fatigued, motor-seized).");
}
