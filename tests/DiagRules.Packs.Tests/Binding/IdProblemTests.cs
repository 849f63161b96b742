using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Binding;

/// <summary>Ids, references and grades.</summary>
public class IdProblemTests
{
    [Fact]
    public void CapitalsInAnId_ReportsDR2003() =>
        PackText.Of("""
            hazards:
              «Hot_Motor»: { signal-word: notice, says: x }
            """).ShouldReport(
            "DR2003",
            "'Hot_Motor' is not an id: small letters, digits and single dashes, a letter first, at most 64 characters. Write 'hot-motor'.");

    [Fact]
    public void KebabCase_DoesNotReportDR2003() =>
        PackText.Of("""
            hazards:
              hot-motor: { signal-word: notice, says: x }
            """).ShouldNotReport("DR2003");

    [Fact]
    public void UnknownHazard_ReportsDR2004() =>
        PackText.Of("""
            hazards:
              hot-motor: { signal-word: notice, says: x }
            access:
              b: { title: x, hazards: [«hot-moter»] }
            """).ShouldReport(
            "DR2004",
            "No hazard 'hot-moter'. Did you mean 'hot-motor'?");

    [Fact]
    public void KnownHazard_DoesNotReportDR2004() =>
        PackText.Of("""
            hazards:
              hot-motor: { signal-word: notice, says: x }
            access:
              b: { title: x, hazards: [hot-motor] }
            """).ShouldNotReport("DR2004");

    [Fact]
    public void UnknownProblemCode_ReportsDR2004() =>
        PackText.Of("""
            access:
              b: { title: x, accepts: { «DR5099»: because } }
            """).ShouldReport(
            "DR2004",
            "No problem code 'DR5099'. Did you mean 'DR5009', 'DR1009' or 'DR2009'?");

    [Fact]
    public void AcceptedError_ReportsDR1009() =>
        PackText.Of("""
            access:
              b: { title: x, accepts: { «DR2004»: because } }
            """).ShouldReport(
            "DR1009",
            "'DR2004' (No such id) is an error, and only warnings can be accepted; mend what it reports.");

    [Fact]
    public void SameIdInTwoSections_ReportsDR2005() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: x }
            access:
              «a»: { title: x }
            """).ShouldReport(
            "DR2005",
            "'a' is the id of an access state here and of a hazard in pack.yaml(6,3); an id stands once in a pack.");

    [Fact]
    public void SameIdInTwoFiles_ReportsDR2005() =>
        new PackText()
            .With("a.yaml", """
                access:
                  a: { title: x }
                """)
            .With("b.yaml", """
                access:
                  «a»: { title: y }
                """)
            .With("pack.yaml", PackText.Head).ShouldReport(
            "DR2005",
            "'a' is the id of an access state here and of an access state in a.yaml(2,3); an id stands once in a pack.");

    [Fact]
    public void ReservedWordAsId_ReportsDR2006() =>
        PackText.Of("""
            access:
              «unlisted»: { title: x }
            """).ShouldReport(
            "DR2006",
            "'unlisted' is reserved for what no listed cause explains and cannot be an id; pick another word.");

    [Fact]
    public void ReservedWordAsGrade_ReportsDR2006() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [b, «worse»] }
            """).ShouldReport(
            "DR2006",
            "'worse' is reserved for the language of conditions and cannot be a grade; pick another word.");

    [Fact]
    public void GradesOfTheBuiltInFinding_ReportsDR2006() =>
        PackText.Of("""
            findings:
              pattern: { «grades»: [a, b] }
            """).ShouldReport(
            "DR2006",
            "'grades' of 'pattern' cannot be changed: the finding is built in, and only its 'title' and 'question' are the pack's.");

    [Fact]
    public void TextsOfTheBuiltInFinding_DoesNotReportDR2006() =>
        PackText.Of("""
            findings:
              pattern: { title: Comes and goes, question: Every time? }
            """).ShouldNotReport("DR2006");

    [Fact]
    public void RepairWhereAHazardIsExpected_ReportsDR2007() =>
        PackText.Of("""
            repairs:
              a: { title: x }
            access:
              b: { title: x, hazards: [«a»] }
            """).ShouldReport(
            "DR2007",
            "'a' is a repair, and here a hazard is expected.");

    [Fact]
    public void UnknownGradeInShows_ReportsDR2008() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [whole, blown] }
            causes:
              b: { title: x, share: 1, shows: { a: { «blow»: 0.5 } } }
            """).ShouldReport(
            "DR2008",
            "Finding 'a' has no grade 'blow'; its grades are 'whole' and 'blown'. Did you mean 'blown'?");

    [Fact]
    public void OneGrade_ReportsDR2009() =>
        PackText.Of("""
            findings:
              a: { title: x, «grades»: [whole] }
            """).ShouldReport(
            "DR2009",
            "'a' has 1 grade (whole); it takes 2 to 8, the healthy one first.");

    [Fact]
    public void NineGrades_ReportsDR2009() =>
        PackText.Of("""
            findings:
              a: { title: x, «grades»: [a1, a2, a3, a4, a5, a6, a7, a8, a9] }
            """).ShouldReport(
            "DR2009",
            "'a' has 9 grades (a1, a2, a3, a4, a5, a6, a7, a8, a9); it takes 2 to 8, the healthy one first.");

    [Fact]
    public void EightGrades_DoesNotReportDR2009() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [a1, a2, a3, a4, a5, a6, a7, a8] }
            """).ShouldNotReport("DR2009");

    [Fact]
    public void SameGradeTwice_ReportsDR2009() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [whole, blown, «whole»] }
            """).ShouldReport(
            "DR2009",
            "'whole' stands twice among the grades of 'a' (whole, blown, whole).");

    [Fact]
    public void TrueAsId_ReportsDR1011() =>
        PackText.Of("""
            access:
              «true»: { title: x }
            """).ShouldReport(
            "DR1011",
            "'true' is a key here, and programs that read YAML disagree on what it is; pick another word.");
}
