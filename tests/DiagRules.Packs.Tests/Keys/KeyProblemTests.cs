using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Keys;

/// <summary>Keys: unknown, missing, misplaced.</summary>
public class KeyProblemTests
{
    [Fact]
    public void MisspeltKey_ReportsDR2001() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, «say»: x, says: y }
            """).ShouldReport(
            "DR2001",
            "'say' is no key of a hazard. Did you mean 'says'? Keys here: signal-word, symbol, says, avoid, clears, only, accepts.");

    [Fact]
    public void KeyOfTheHost_DoesNotReportDR2001() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: x, x-shop: { anything: [1, 2] } }
            """).ShouldNotReport("DR2001");

    [Fact]
    public void MisspeltSection_ReportsDR2001() =>
        PackText.Of("""
            «finding»:
              a: { title: x, grades: [b, c] }
            """).ShouldReport(
            "DR2001",
            "'finding' is no key of pack.yaml. Did you mean 'findings'? Keys here: format, pack, version, title, chassis, extends, language, calculations, labour, specialist-cost, unlisted, coexistence, trust, acceptance, sets, systems, words, accepts, readings, findings, effects, causes, preconditions, parameters, complaints, rules, checks, access, hazards, repairs.");

    [Fact]
    public void AccuracyOfADerivedReading_ReportsDR2001() =>
        PackText.Of("""
            readings:
              a: { question: x, unit: V }
              b: { from: a * 2, «accuracy»: 0.5 % }
            """).ShouldReport(
            "DR2001",
            "'accuracy' has no place beside 'from': 'b' is worked out from other readings and not measured; take one of the two out.");

    [Fact]
    public void NoGrades_ReportsDR2002() =>
        PackText.Of("""
            findings:
              «a»: { title: x }
            """).ShouldReport(
            "DR2002",
            "'a' has no 'grades', which a finding must have; write for example 'grades: [whole, blown]'.");

    [Fact]
    public void Grades_DoesNotReportDR2002() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [b, c] }
            """).ShouldNotReport("DR2002");

    [Fact]
    public void NeitherTitleNorQuestion_ReportsDR2002() =>
        PackText.Of("""
            findings:
              «a»: { grades: [b, c] }
            """).ShouldReport(
            "DR2002",
            "'a' has no 'title' or 'question', which a finding must have; write for example 'title: Pump supply fuse'.");

    [Fact]
    public void QuestionWithoutTitle_DoesNotReportDR2002() =>
        PackText.Of("""
            findings:
              a: { question: x, grades: [b, c] }
            """).ShouldNotReport("DR2002");

    [Fact]
    public void CauseWithoutShare_ReportsDR2002() =>
        PackText.Of("""
            causes:
              «a»: { title: x }
            """).ShouldReport(
            "DR2002",
            "'a' has no 'share', which a cause must have; write for example 'share: 4'.");

    [Fact]
    public void ReadingWithoutQuestion_ReportsDR2002() =>
        PackText.Of("""
            readings:
              «a»: { unit: V }
            """).ShouldReport(
            "DR2002",
            "'a' has no 'question', which a reading must have; write for example 'question: What do you hear from the power unit?'.");

    [Fact]
    public void BandsWithoutReading_ReportsDR2002() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [b, c], bands: «»{ rising: [b, 3 V, c] } }
            """).ShouldReport(
            "DR2002",
            "'bands' has no 'of', which 'bands' must have; write for example 'of: fuse-drop'.");

    [Fact]
    public void ListEditWithoutABase_ReportsDR1110() =>
        PackText.Of("""
            access:
              b: { title: x, «hazards+»: [a] }
            """).ShouldReport(
            "DR1110",
            "'hazards+' changes a list of a base, but this pack extends none; write 'hazards' with the whole list.");

    [Fact]
    public void ListEditOfASentence_ReportsDR1110() =>
        PackText.Of("""
            access:
              b: { title: x, «title+»: y }
            """).ShouldReport(
            "DR1110",
            "'title+' changes a list, but 'title' is a sentence; write 'title' with its new value.");

    [Fact]
    public void RemoveWithoutABase_ReportsDR1107() =>
        PackText.Of("""
            access:
              a: «remove»
            """).ShouldReport(
            "DR1107",
            "'a: remove' takes something of a base away, but this pack extends none; delete the line.");
}
