using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Checks;

/// <summary>Circles among rules, and what rules may do.</summary>
public class DependenceProblemTests
{
    [Fact]
    public void ReadingsFromEachOther_ReportsDR3007() =>
        PackText.Of("""
            readings:
              a: { from: «b» * 2 }
              b: { from: a * 2 }
            """).ShouldReport(
            "DR3007",
            "'a' depends on itself: 'a' looks at 'b' by 'from' in pack.yaml(6,14); 'b' looks at 'a' by 'from' in pack.yaml(7,14). Take one of these links out.");

    [Fact]
    public void RuleThatSettlesWhatItAsks_ReportsDR3007() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [b, c] }
              d: { title: x, grades: [e, f], read: { f: «unknown a» } }
            rules:
              r:
                when: d is f
                settles: { a: c }
            """).ShouldReport(
            "DR3007",
            "'d' depends on itself: 'd' looks at 'a' by 'read' in pack.yaml(7,45), where it asks for 'unknown'; 'a' looks at 'd' by rule 'r' in pack.yaml(10,11). Take one of these links out.");

    [Fact]
    public void RuleThatSettlesAnother_DoesNotReportDR3007() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [b, c] }
              d: { title: x, grades: [e, f] }
            rules:
              r:
                when: unknown a and a is c
                settles: { d: f }
            """).ShouldNotReport("DR3007");

    [Fact]
    public void PreconditionThatRulesItselfOut_ReportsDR3007() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [b, c] }
            preconditions:
              p: { title: x, share: 1, must: «a is b», restore: y }
            rules:
              r:
                when: p is present
                settles: { a: c }
            """).ShouldReport(
            "DR3007",
            "'p' depends on itself: 'p' looks at 'a' by 'must' in pack.yaml(8,34); 'a' looks at 'p' by rule 'r' in pack.yaml(11,11). Take one of these links out.");

    [Fact]
    public void RuleSettlesAnEffect_ReportsDR3008() =>
        PackText.Of("""
            effects:
              a: { grades: [b, c] }
            findings:
              d: { title: x, grades: [e, f] }
            rules:
              r: { when: d is f, settles: { «a»: c } }
            """).ShouldReport(
            "DR3008",
            "'r' settles 'a', which is an effect; rules settle findings: make it a finding.");

    [Fact]
    public void RuleWithoutConsequence_ReportsDR3010() =>
        PackText.Of("""
            findings:
              d: { title: x, grades: [e, f] }
            rules:
              «r»: { when: d is f }
            """).ShouldReport(
            "DR3010",
            "'r' has no consequence; add one or more of 'settles', 'rule-out', 'advise', 'hazards' and 'defer'.");

    [Fact]
    public void RuleWithoutWhen_ReportsDR3010() =>
        PackText.Of("""
            rules:
              «r»: { advise: x }
            """).ShouldReport(
            "DR3010",
            "'r' has no 'when'; say when it applies, for example 'when: pump-fuse is blown'.");

    [Fact]
    public void CheckDeferredForEver_ReportsDR5012() =>
        PackText.Of("""
            findings:
              d: { title: x, grades: [e, f] }
            checks:
              look: { title: x, gives: [d], minutes: 1 }
              other: { title: x, gives: [pattern], minutes: 1 }
            rules:
              r: { when: «unknown d», defer: [look] }
            """).ShouldReport(
            "DR5012",
            "'r' defers 'look' as long as 'd' is unknown, and nothing else gives 'd'; defer something else, or ask for another thing.");

    [Fact]
    public void AnotherCheckGivesIt_DoesNotReportDR5012() =>
        PackText.Of("""
            findings:
              d: { title: x, grades: [e, f] }
            checks:
              look: { title: x, gives: [d], minutes: 1 }
              other: { title: x, gives: [d], minutes: 1 }
            rules:
              r: { when: unknown d, defer: [look] }
            """).ShouldNotReport("DR5012");

    [Fact]
    public void EveryCheckDeferred_ReportsDR5012() =>
        PackText.Of("""
            findings:
              d: { title: x, grades: [e, f] }
            checks:
              look: { title: x, gives: [d], minutes: 1 }
              other: { title: x, gives: [d, pattern], minutes: 1 }
            rules:
              «r»: { when: unknown d or unknown pattern, defer: [look, other] }
            """).ShouldReport(
            "DR5012",
            "'r' defers every check while nothing is known, so a job cannot begin; leave one of them open.");
}
