using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Checks;

/// <summary>Limits, ranges and their units.</summary>
public class BandsProblemTests
{
    [Fact]
    public void LimitsOutOfOrder_ReportsDR3106() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
            findings:
              a: { title: x, grades: [b, c, d], bands: { of: v, rising: [b, 3 V, c, «200 mV», d] } }
            """).ShouldReport(
            "DR3106",
            "'200 mV' is not above '3 V', so nothing is left for the grade 'c' of 'a'; write the limits in rising order.");

    [Fact]
    public void LimitsInOrder_DoesNotReportDR3106() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
            findings:
              a: { title: x, grades: [b, c, d], bands: { of: v, rising: [b, 200 mV, c, 3 V, d] } }
            """).ShouldNotReport("DR3106");

    [Fact]
    public void LimitsOutOfOrderOnOneChassis_ReportsDR3106() =>
        PackText.WithHead(PackText.Head + """
            chassis: [LD4, LD4-S]
            parameters:
              p: { value: 5 V, for: { LD4-S: 2 V } }
            readings:
              v: { question: x, unit: V }
            findings:
              a: { title: x, grades: [b, c, d], bands: { of: v, rising: [b, 3 V, c, «p», d] } }
            """).ShouldReport(
            "DR3106",
            "'p' is not above '3 V' on chassis 'LD4-S', so nothing is left for the grade 'c' of 'a'; write the limits in rising order.");

    [Fact]
    public void RangeOutOfOrder_ReportsDR3106() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V, plausible: «32 V .. 0 V» }
            """).ShouldReport(
            "DR3106",
            "The range '32 V .. 0 V' begins with 32 V and ends with 0 V, which is less; write '0 V .. 32 V'.");

    [Fact]
    public void RangeInOrder_DoesNotReportDR3106() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V, plausible: 0 V .. 32 V }
            """).ShouldNotReport("DR3106");

    [Fact]
    public void LimitWithoutUnit_ReportsDR3103() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
            findings:
              a: { title: x, grades: [b, c], bands: { of: v, rising: [b, «3», c] } }
            """).ShouldReport(
            "DR3103",
            "'3' has no unit; a voltage (V) is expected, such as '5 V'.");

    [Fact]
    public void LimitOfAnotherUnit_ReportsDR3102() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
            findings:
              a: { title: x, grades: [b, c], bands: { of: v, rising: [b, «3 A», c] } }
            """).ShouldReport(
            "DR3102",
            "'3 A' is a current (A), and a voltage (V) is expected, such as '5 V'.");

    [Fact]
    public void RisingEndsWithALimit_ReportsDR1009() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
            findings:
              a: { title: x, grades: [b, c], bands: { of: v, «rising»: [b, 3 V] } }
            """).ShouldReport(
            "DR1009",
            "'rising' of 'a' has 2 items; it alternates grade, limit, grade and ends with a grade, such as '[b, 0.3 V, c]'.");

    [Fact]
    public void UnitOfADerivedReading_ReportsDR3102() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
              w: { from: «v * 2», unit: A }
            """).ShouldReport(
            "DR3102",
            "'v * 2' is a voltage (V), and a current (A) is expected, such as '5 A'.");
}
