using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Checks;

/// <summary>Checks, access, repairs, hazards.</summary>
public class WorkProblemTests
{
    [Fact]
    public void CheckGivesNothing_ReportsDR5001() =>
        PackText.Of("""
            checks:
              a: { title: x, minutes: 1, «gives»: [] }
            """).ShouldReport(
            "DR5001",
            "'a' gives nothing; name the readings, findings or causes it shows.");

    [Fact]
    public void CheckGivesADerivedReading_ReportsDR5001() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
              w: { from: v * 2 }
            checks:
              a: { title: x, minutes: 1, gives: [«w»] }
            """).ShouldReport(
            "DR5001",
            "'a' gives 'w', which is worked out ('from: v * 2') and not measured; name the readings it derives from.");

    [Fact]
    public void CheckGivesAMeasuredReading_DoesNotReportDR5001() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
              w: { from: v * 2 }
            checks:
              a: { title: x, minutes: 1, gives: [v] }
            """).ShouldNotReport("DR5001");

    [Fact]
    public void AccessInACircle_ReportsDR5002() =>
        PackText.Of("""
            access:
              a: { title: x, needs: [«b»] }
              b: { title: x, needs: [a] }
            """).ShouldReport(
            "DR5002",
            "'a' needs itself in the end: 'a' needs 'b' in pack.yaml(6,26); 'b' needs 'a' in pack.yaml(7,26). Take one of these out.");

    [Fact]
    public void AccessThatExcludesEachOther_DoesNotReportDR5002() =>
        PackText.Of("""
            access:
              a: { title: x, excludes: [b] }
              b: { title: x, needs: [a], excludes: [a] }
            """).ShouldNotReport("DR5002");

    [Fact]
    public void AlteredAndGiven_ReportsDR5003() =>
        PackText.Of("""
            findings:
              d: { title: x, grades: [e, f] }
            checks:
              tap: { title: x, minutes: 1, gives: [d], alters: [«d»] }
            """).ShouldReport(
            "DR5003",
            "'tap' alters 'd' and gives it as well; give the response a finding of its own, such as 'after-tap'.");

    [Fact]
    public void VerificationThatDecidesNothing_ReportsDR5004() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
            checks:
              m: { title: x, minutes: 1, gives: [v] }
            repairs:
              r: { title: x, verify-by: [«m»] }
            """).ShouldReport(
            "DR5004",
            "'m' cannot verify 'r': it gives 'v', and no finding is read from that; add 'bands' or 'read' to a finding, or name another check.");

    [Fact]
    public void VerificationThatReadsAFinding_DoesNotReportDR5004() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
            findings:
              f: { title: x, grades: [a, b], bands: { of: v, rising: [a, 3 V, b] } }
            checks:
              m: { title: x, minutes: 1, gives: [v] }
            repairs:
              r: { title: x, verify-by: [m] }
            """).ShouldNotReport("DR5004");

    [Fact]
    public void VerificationByAFindingItDoesNotDecide_ReportsDR5004() =>
        PackText.Of("""
            findings:
              f: { title: x, grades: [a, b] }
              g: { title: x, grades: [c, d] }
            checks:
              m: { title: x, minutes: 1, gives: [f] }
            repairs:
              r: { title: x, verify-by: [{ check: «m», findings: [g] }] }
            """).ShouldReport(
            "DR5004",
            "'m' does not decide 'g', by which 'r' is to be verified; it decides 'f'.");

    [Fact]
    public void UnknownSignalWord_ReportsDR5008() =>
        PackText.Of("""
            hazards:
              a: { signal-word: «attention», says: x }
            """).ShouldReport(
            "DR5008",
            "No signal word 'attention'; it is one of 'danger', 'warning', 'caution' or 'notice' (ANSI Z535.6, ISO 3864-2).");

    [Fact]
    public void KnownSignalWord_DoesNotReportDR5008() =>
        PackText.Of("""
            hazards:
              a: { signal-word: caution, says: x }
            """).ShouldNotReport("DR5008");

    [Fact]
    public void UnknownSign_ReportsDR5008() =>
        PackText.Of("""
            hazards:
              a: { signal-word: caution, says: x, symbol: «W912» }
            """).ShouldReport(
            "DR5008",
            "No sign 'W912' in ISO 7010. Did you mean 'W012', 'M012' or 'P012'? Signs known: W001 to W080, M001 to M068, P001 to P074.");

    [Fact]
    public void KnownSign_DoesNotReportDR5008() =>
        PackText.Of("""
            hazards:
              a: { signal-word: caution, says: x, symbol: W012 }
            """).ShouldNotReport("DR5008");

    [Fact]
    public void NegativeMinutes_ReportsDR3101() =>
        PackText.Of("""
            access:
              a: { title: x, minutes: «-4» }
            """).ShouldReport(
            "DR3101",
            "'-4' is below zero; 'minutes' is 0 or more.");

    [Fact]
    public void UnknownSkill_ReportsDR1009() =>
        PackText.Of("""
            access:
              a: { title: x, skill: «workshp» }
            """).ShouldReport(
            "DR1009",
            "'skill' is 'workshp'; it takes 'owner', 'owner-with-meter', 'workshop' or 'specialist'. Did you mean 'workshop'?");

    [Fact]
    public void TorqueThatIsEnergy_ReportsDR3102() =>
        PackText.Of("""
            repairs:
              a: { title: x, fasteners: [{ at: nut, torque: «12 J» }] }
            """).ShouldReport(
            "DR3102",
            "'12 J' is an energy (J), and a torque (N.m) is expected, such as '5 N.m'.");

    [Fact]
    public void TorqueAndSpanner_DoesNotReportDR3102() =>
        PackText.Of("""
            repairs:
              a: { title: x, fasteners: [{ at: nut, across-flats: 16 mm, torque: 12 N.m }] }
            """).ShouldNotReport("DR3102");
}
