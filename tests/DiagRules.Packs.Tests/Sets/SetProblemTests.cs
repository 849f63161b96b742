using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Sets;

/// <summary>Entries for all members of a set.</summary>
public class SetProblemTests
{
    [Fact]
    public void UnknownSetInAnId_ReportsDR2010() =>
        PackText.WithHead(PackText.Head + """
            sets: { side: { left: left, right: right } }
            access:
              «a-$sids»: { title: x }
            """).ShouldReport(
            "DR2010",
            "No set 'sids' for '$sids'. Did you mean 'side'? Sets here: side.");

    [Fact]
    public void KnownSetInAnId_DoesNotReportDR2010() =>
        PackText.WithHead(PackText.Head + """
            sets: { side: { left: left, right: right } }
            access:
              a-$side: { title: x }
            """).ShouldNotReport("DR2010");

    [Fact]
    public void UnknownSetInASentence_ReportsDR2010() =>
        PackText.WithHead(PackText.Head + """
            sets: { side: { left: left, right: right } }
            access:
              a: { title: «Costs $five» }
            """).ShouldReport(
            "DR2010",
            "No set 'five' for '$five' in a sentence; write '$$' for a dollar sign.");

    [Fact]
    public void DollarSignInASentence_DoesNotReportDR2010() =>
        PackText.WithHead(PackText.Head + """
            sets: { side: { left: left, right: right } }
            access:
              a: { title: Costs $$five or $5 }
            """).ShouldNotReport("DR2010");

    [Fact]
    public void SetWhereOneIsNamed_ReportsDR2011() =>
        PackText.WithHead(PackText.Head + """
            sets: { side: { left: left, right: right } }
            readings:
              r-$side: { question: x, unit: V }
            findings:
              a: { title: x, grades: [b, c], bands: { of: «r-$side», rising: [b, 3 V, c] } }
            """).ShouldReport(
            "DR2011",
            "'r-$side' stands for all members of '$side', and here one reading is named; write out the member.");

    [Fact]
    public void SetInASentenceOutsideATemplate_ReportsDR2011() =>
        PackText.WithHead(PackText.Head + """
            sets: { side: { left: left, right: right } }
            access:
              a: { title: «Cover $side off» }
            """).ShouldReport(
            "DR2011",
            "'$side' stands in a sentence of an entry that is not copied for its members; put '$side' into the id, or write the word.");

    [Fact]
    public void SetWithACapital_ReportsDR2003() =>
        PackText.WithHead(PackText.Head + """
            sets: { «Side»: { left: left } }
            """).ShouldReport(
            "DR2003",
            "'Side' is no name of a set: one word of small letters a-z. Write 'side'.");

    [Fact]
    public void FaultInATemplate_ReportsDR2004() =>
        PackText.WithHead(PackText.Head + """
            sets: { side: { left: left, right: right } }
            access:
              a-$side: { title: x, needs: [«b-$side»] }
            """).ShouldReport(
            "DR2004",
            "No access state 'b-left'. Did you mean 'a-left'?");

    [Fact]
    public void TemplateThatRefersToATemplate_DoesNotReportDR2004() =>
        PackText.WithHead(PackText.Head + """
            sets: { side: { left: left, right: right } }
            access:
              a-$side: { title: x, needs: [b-$side] }
              b-$side: { title: x }
            """).ShouldNotReport("DR2004");

    [Fact]
    public void MemberTwice_ReportsDR2005() =>
        PackText.WithHead(PackText.Head + """
            sets: { side: { left: left, right: right } }
            access:
              a-$side: { title: x }
            hazards:
              «a-left»: { signal-word: notice, says: x }
            """).ShouldReport(
            "DR2005",
            "'a-left' is the id of a hazard here and of an access state in pack.yaml(7,3); an id stands once in a pack.");
}
