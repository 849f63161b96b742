using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Checks;

/// <summary>Causes, effects and what they show.</summary>
public class NetworkProblemTests
{
    [Fact]
    public void NotAProbability_ReportsDR4001() =>
        PackText.Of("""
            findings:
              noise: { title: x, grades: [quiet, whines, rattles] }
            causes:
              a: { title: x, share: 1, shows: { noise: { whines: «1.5» } } }
            """).ShouldReport(
            "DR4001",
            "'1.5' is not a probability, which is 0..1, a percentage, or one of always, nearly-always, usually, often, sometimes, seldom, hardly-ever, never. Did you mean '1.5 %'?");

    [Fact]
    public void Percentage_DoesNotReportDR4001() =>
        PackText.Of("""
            findings:
              noise: { title: x, grades: [quiet, whines, rattles] }
            causes:
              a: { title: x, share: 1, shows: { noise: { whines: 15 % } } }
            """).ShouldNotReport("DR4001");

    [Fact]
    public void FirstGradeInShows_ReportsDR4002() =>
        PackText.Of("""
            findings:
              noise: { title: x, grades: [quiet, whines, rattles] }
            causes:
              a: { title: x, share: 1, shows: { noise: { «quiet»: 0.5 } } }
            """).ShouldReport(
            "DR4002",
            "'quiet' is the first grade of 'noise' and gets what the others leave over; take it out.");

    [Fact]
    public void FirstGradeInBackground_ReportsDR4002() =>
        PackText.Of("""
            findings:
              noise: { title: x, grades: [quiet, whines], background: { «quiet»: 0.9 } }
            """).ShouldReport(
            "DR4002",
            "'quiet' is the first grade of 'noise' and gets what the others leave over; take it out.");

    [Fact]
    public void GradesOverOne_ReportsDR4003() =>
        PackText.Of("""
            findings:
              noise: { title: x, grades: [quiet, whines, rattles] }
            causes:
              a: { title: x, share: 1, shows: { «noise»: { whines: usually, rattles: 0.4 } } }
            """).ShouldReport(
            "DR4003",
            "Grades of 'noise' under 'a' add up to 1.15 (whines usually = 0.75, rattles 0.4); together they can be 1 at most.");

    [Fact]
    public void GradesOfExactlyOne_DoesNotReportDR4003() =>
        PackText.Of("""
            findings:
              noise: { title: x, grades: [quiet, whines, rattles] }
            causes:
              a: { title: x, share: 1, shows: { noise: { whines: usually, rattles: 0.25 } } }
            """).ShouldNotReport("DR4003");

    [Fact]
    public void ShareAsPercentage_ReportsDR4004() =>
        PackText.Of("""
            causes:
              a: { title: x, share: «5 %» }
            """).ShouldReport(
            "DR4004",
            "The share of 'a' is '5 %'; it must be a plain number of 0 or more, such as '9': how often it is behind a complaint compared with the others.");

    [Fact]
    public void NegativeShare_ReportsDR4004() =>
        PackText.Of("""
            causes:
              a: { title: x, share: «-5» }
            """).ShouldReport(
            "DR4004",
            "The share of 'a' is '-5'; it must be a plain number of 0 or more, such as '9': how often it is behind a complaint compared with the others.");

    [Fact]
    public void ShareAndProbability_ReportsDR4005() =>
        PackText.Of("""
            causes:
              a: { title: x, share: 5 }
              b: { title: x, «probability»: 0.1 }
            """).ShouldReport(
            "DR4005",
            "'b' has a probability, and 'a' in pack.yaml(6,18) has a share; a pack gives all its causes shares, or all of them probabilities.");

    [Fact]
    public void ProbabilitiesAlone_DoesNotReportDR4005() =>
        PackText.Of("""
            causes:
              a: { title: x, probability: 0.2 }
              b: { title: x, probability: 0.1 }
            """).ShouldNotReport("DR4005");

    [Fact]
    public void UnlistedBesideProbabilities_ReportsDR4005() =>
        PackText.WithHead(PackText.Head + """
            unlisted: 5
            causes:
              b: { title: x, «probability»: 0.1 }
            """).ShouldReport(
            "DR4005",
            "'b' has a probability, and 'unlisted' in pack.yaml(5,1) has a share; a pack gives all its causes shares, or all of them probabilities.");

    [Fact]
    public void EffectsInACircle_ReportsDR4007() =>
        PackText.Of("""
            effects:
              a: { grades: [b, c], shows: { «d»: { f: 0.5 } } }
              d: { grades: [e, f], shows: { a: { c: 0.5 } } }
            """).ShouldReport(
            "DR4007",
            "'a' shows itself in the end: 'a' shows 'd' in pack.yaml(6,33); 'd' shows 'a' in pack.yaml(7,33). Take one of these links out.");

    [Fact]
    public void CircleThroughATable_ReportsDR4007() =>
        PackText.Of("""
            effects:
              a: { grades: [b, c], shows: { «d»: { f: 0.5 } } }
              d: { grades: [e, f] }
              g: { grades: [h, i], given: [d], table: [{ if: { d: f }, then: { i: 0.5 } }, { otherwise: { i: 0 } }], shows: { a: { c: 0.1 } } }
            """).ShouldReport(
            "DR4007",
            "'a' shows itself in the end: 'a' shows 'd' in pack.yaml(6,33); 'd' shows 'g' in pack.yaml(8,36); 'g' shows 'a' in pack.yaml(8,115). Take one of these links out.");

    [Fact]
    public void ShowsWithoutGrades_ReportsDR4008() =>
        PackText.Of("""
            findings:
              noise: { title: x, grades: [quiet, whines, rattles] }
            effects:
              a: { grades: [b, c, d], «shows»: { noise: { whines: 0.5 } } }
            """).ShouldReport(
            "DR4008",
            "'a' has the grades 'b', 'c' and 'd', so its 'shows' is keyed by them first; write 'shows: { d: { noise: { ... } } }'.");

    [Fact]
    public void ShowsByGrade_DoesNotReportDR4008() =>
        PackText.Of("""
            findings:
              noise: { title: x, grades: [quiet, whines, rattles] }
            effects:
              a: { grades: [b, c, d], shows: { c: { noise: { whines: 0.5 } }, d: { noise: { rattles: 0.5 } } } }
            """).ShouldNotReport("DR4008");

    [Fact]
    public void ShowsOfTheFirstGrade_ReportsDR4008() =>
        PackText.Of("""
            findings:
              noise: { title: x, grades: [quiet, whines, rattles] }
            effects:
              a: { grades: [b, c, d], shows: { «b»: { noise: { whines: 0.5 } } } }
            """).ShouldReport(
            "DR4008",
            "'b' is the first grade of 'a', and a sound machine shows nothing; key 'shows' by 'c' or 'd'.");

    [Fact]
    public void ShowsACause_ReportsDR4009() =>
        PackText.Of("""
            causes:
              a: { title: x, share: 1, shows: { «b»: { present: 0.5 } } }
              b: { title: x, share: 1 }
            """).ShouldReport(
            "DR4009",
            "'b' is a cause, and 'shows' of 'a' names findings and effects.");

    [Fact]
    public void ShowsAReading_ReportsDR4009() =>
        PackText.Of("""
            readings:
              v: { question: x, unit: V }
            causes:
              a: { title: x, share: 1, shows: { «v»: { high: 0.5 } } }
            """).ShouldReport(
            "DR4009",
            "'v' is a reading, and 'shows' of 'a' names findings and effects.");

    [Fact]
    public void TableWithAGap_ReportsDR4010() =>
        PackText.Of("""
            effects:
              a: { grades: [no, yes] }
              b: { grades: [no, yes] }
            findings:
              n: { title: x, grades: [low, high], given: [a, b], «table»: [{ if: { a: yes, b: no }, then: { high: 0.7 } }] }
            """).ShouldReport(
            "DR4010",
            "'a: no, b: no' stands in no row of the table of 'n' (and 2 more); add rows, or one with 'otherwise'.");

    [Fact]
    public void TableWithOtherwise_DoesNotReportDR4010() =>
        PackText.Of("""
            effects:
              a: { grades: [no, yes] }
              b: { grades: [no, yes] }
            findings:
              n: { title: x, grades: [low, high], given: [a, b], table: [{ if: { a: yes, b: no }, then: { high: 0.7 } }, { otherwise: { high: 0.1 } }] }
            """).ShouldNotReport("DR4010");

    [Fact]
    public void TableWithAnOverlap_ReportsDR4010() =>
        PackText.Of("""
            effects:
              a: { grades: [no, yes] }
              b: { grades: [no, yes] }
            findings:
              n: { title: x, grades: [low, high], given: [a, b], table: [{ if: { a: yes }, then: { high: 0.7 } }, «»{ if: { b: yes }, then: { high: 0.6 } }, { otherwise: { high: 0.1 } }] }
            """).ShouldReport(
            "DR4010",
            "'a: yes, b: yes' stands in two rows of the table of 'n'; rows must not overlap.");

    [Fact]
    public void TableAndShows_ReportsDR4011() =>
        PackText.Of("""
            effects:
              a: { grades: [no, yes] }
              b: { grades: [no, yes] }
            findings:
              n: { title: x, grades: [low, high], given: [a], table: [{ otherwise: { high: 0.1 } }] }
            causes:
              c: { title: x, share: 1, shows: { «n»: { high: 0.5 } } }
            """).ShouldReport(
            "DR4011",
            "'c' shows 'n', which has a table (pack.yaml(9,51)); name 'c' in its 'given', or take the table out.");

    [Fact]
    public void TableAndBackground_ReportsDR4011() =>
        PackText.Of("""
            effects:
              a: { grades: [no, yes] }
              b: { grades: [no, yes] }
            findings:
              n: { title: x, grades: [low, high], «background»: { high: 0.1 }, given: [a], table: [{ otherwise: { high: 0.1 } }] }
            """).ShouldReport(
            "DR4011",
            "'n' has a table (pack.yaml(9,78)) and a 'background'; the table says it all, so take one of the two out.");

    [Fact]
    public void EffectWithQuestion_ReportsDR4018() =>
        PackText.Of("""
            effects:
              a: { grades: [no, yes], «question»: x }
            """).ShouldReport(
            "DR4018",
            "'question' has no place in an effect: nobody observes it, so make it a finding, or take the key out.");

    [Fact]
    public void IntermittentTwice_ReportsDR1003() =>
        PackText.Of("""
            causes:
              a: { title: x, share: 1, «intermittent»: 0.5, shows: { pattern: { intermittent: 0.4 } } }
            """).ShouldReport(
            "DR1003",
            "'intermittent' of 'a' says what its 'shows' says of 'pattern'; keep one of them.");

    [Fact]
    public void TableWithoutGiven_ReportsDR2002() =>
        PackText.Of("""
            findings:
              n: { title: x, grades: [low, high], «table»: [{ otherwise: { high: 0.1 } }] }
            """).ShouldReport(
            "DR2002",
            "'n' has 'table' without 'given'; the two belong together.");
}
