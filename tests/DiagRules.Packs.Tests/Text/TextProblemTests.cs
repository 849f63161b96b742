using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Text;

/// <summary>Files and YAML: the DR10xx codes.</summary>
public class TextProblemTests
{
    [Fact]
    public void SentenceWithColon_ReportsDR1001() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [b, c] }
              d:
                question: What is this«»: a leak?
                grades: [e, f]
            """).ShouldReport(
            "DR1001",
            "'question: What is this: a leak?' cannot be read as YAML; text that holds ': ' must stand in quotes. (While scanning a plain scalar value, found invalid mapping.)\n        question: What is this: a leak?\n                              ^");

    [Fact]
    public void SentenceWithColonInQuotes_DoesNotReportDR1001() =>
        PackText.Of("""
            findings:
              d:
                question: "What is this: a leak?"
                grades: [e, f]
            """).ShouldNotReport("DR1001");

    [Fact]
    public void BracketNotClosed_ReportsDR1001() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [b«», c
              d: e }
            """).ShouldReport(
            "DR1001",
            "'a: { title: x, grades: [b, c' cannot be read as YAML; expected ',' or ']' for the '[' of line 6.\n      a: { title: x, grades: [b, c\n                               ^");

    [Fact]
    public void ValueBeginsWithPercent_ReportsDR1001() =>
        PackText.Of("""
            causes:
              a: { title: «»% of something, share: 1 }
            """).ShouldReport(
            "DR1001",
            "'a: { title: % of something, share: 1 }' cannot be read as YAML; text that begins with '%' must stand in quotes. (While scanning for the next token, found character that cannot start any token.)\n      a: { title: % of something, share: 1 }\n                  ^");

    [Fact]
    public void TabForIndenting_ReportsDR1002() =>
        PackText.Of("hazards:\n«\t»a: { signal-word: notice, says: x }\n").ShouldReport(
            "DR1002",
            "'<tab>a: { signal-word: notice, says: x }' holds a tab; use spaces.");

    [Fact]
    public void SpacesForIndenting_DoesNotReportDR1002() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: x }
            """).ShouldNotReport("DR1002");

    [Fact]
    public void SameKeyTwice_ReportsDR1003() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: x, «says»: y }
            """).ShouldReport(
            "DR1003",
            "'says' stands here and in line 6, column 29; keep one of them.");

    [Fact]
    public void DifferentKeys_DoesNotReportDR1003() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: x, avoid: y }
            """).ShouldNotReport("DR1003");

    [Fact]
    public void Anchor_ReportsDR1004() =>
        PackText.Of("""
            hazards:
              a: «&x» { signal-word: notice, says: x }
            """).ShouldReport(
            "DR1004",
            "'&x' is an anchor; write the value out (in quotes, if the sign is part of a sentence).");

    [Fact]
    public void Alias_ReportsDR1004() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: «*note» }
            """).ShouldReport(
            "DR1004",
            "'*note' is an alias; write the value out (in quotes, if the sign is part of a sentence).");

    [Fact]
    public void AsteriskInQuotes_DoesNotReportDR1004() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: "*note" }
            """).ShouldNotReport("DR1004");

    [Fact]
    public void Tag_ReportsDR1004() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: «!!str» x }
            """).ShouldReport(
            "DR1004",
            "'!!str' is a tag; write the value out (in quotes, if the sign is part of a sentence).");

    [Fact]
    public void MergeKey_ReportsDR1004() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: x, «<<»: { avoid: y } }
            """).ShouldReport(
            "DR1004",
            "'<<' is a merge key; write the keys out.");

    [Fact]
    public void Directive_ReportsDR1004() =>
        PackText.WithHead("""
            «%YAML 1.2»
            ---
            format: 1
            pack: demo
            version: 1.0.0
            title: Demo lift
            """).ShouldReport(
            "DR1004",
            "'%YAML 1.2' is a YAML directive; take it out, packs need none.");

    [Fact]
    public void SentenceCutAtItsComma_ReportsDR1005() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: First this, «then that» }
            """).ShouldReport(
            "DR1005",
            "'then that' has no value; a comma ends the value there: put the sentence in quotes.");

    [Fact]
    public void SentenceWithCommaInQuotes_DoesNotReportDR1005() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: "First this, then that" }
            """).ShouldNotReport("DR1005");

    [Fact]
    public void KeyWithoutValueInABlock_ReportsDR1005() =>
        PackText.Of("""
            hazards:
              a:
                signal-word: notice
                «says»:
            """).ShouldReport(
            "DR1005",
            "'says' has no value; write a value behind the colon, or delete the key.");

    [Fact]
    public void EmptyItem_ReportsDR1005() =>
        PackText.Of("""
            checks:
              a:
                title: x
                gives: [pattern]
                minutes: 1
                steps:
                  - one
                  -«»
            """).ShouldReport(
            "DR1005",
            "'-' has nothing behind it; write the item, or delete the line.");

    [Fact]
    public void SentenceCutOffByAComment_ReportsDR1006() =>
        PackText.Of("""
            hazards:
              a:
                signal-word: notice
                says: «Connector» #4 sparks
            """).ShouldReport(
            "DR1006",
            "'Connector' is all that is left of 'says': YAML takes '#4 sparks' for a comment; put the sentence in quotes, or the comment on a line of its own.");

    [Fact]
    public void CommentBehindANumber_DoesNotReportDR1006() =>
        PackText.Of("""
            checks:
              a:
                title: x
                gives: [pattern]
                minutes: 1    # a guess
            """).ShouldNotReport("DR1006");

    [Fact]
    public void HiddenCharacter_ReportsDR1007() =>
        PackText.Of("hazards:\n  a: { signal-word: notice, says: x«\u200B»y }\n").ShouldReport(
            "DR1007",
            "'U+200B zero width space' is not seen in an editor; take it out.");

    [Fact]
    public void NonBreakingSpaceInASentence_DoesNotReportDR1007() =>
        PackText.Of("hazards:\n  a: { signal-word: notice, says: x\u00A0y }\n").ShouldNotReport("DR1007");

    [Fact]
    public void DirectionTurned_ReportsDR1007() =>
        PackText.Of("hazards:\n  a: { signal-word: notice, says: x«\u202E»y }\n").ShouldReport(
            "DR1007",
            "'U+202E right-to-left override' is not seen in an editor; take it out.");

    [Fact]
    public void MergeConflict_ReportsDR1008() =>
        PackText.Of("""
            hazards:
            «<<<<<<< ours»
              a: { signal-word: notice, says: x }
            =======
              a: { signal-word: caution, says: x }
            >>>>>>> theirs
            """).ShouldReport(
            "DR1008",
            "'<<<<<<< ours' begins an unresolved merge: one side starts with 'a: { signal-word: notice, says: x }', the other with 'a: { signal-word: caution, says: x }'; keep one of them and delete the marks.");

    [Fact]
    public void ListWhereAMapIsExpected_ReportsDR1009() =>
        PackText.Of("""
            hazards: «»[a, b]
            """).ShouldReport(
            "DR1009",
            "'hazards' is a list; expected is a map of ids.");

    [Fact]
    public void MapWhereTextIsExpected_ReportsDR1009() =>
        PackText.Of("""
            hazards:
              a: { signal-word: notice, says: «»{ b: c } }
            """).ShouldReport(
            "DR1009",
            "'says' is a map; expected is a sentence.");

    [Fact]
    public void TextWhereAListIsExpected_ReportsDR1009() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: «whole» }
            """).ShouldReport(
            "DR1009",
            "'grades' is text; expected is a list of grades.");

    [Fact]
    public void SecondDocument_ReportsDR1010() =>
        new PackText()
            .With("pack.yaml", PackText.Head)
            .With("more.yaml", """
                hazards:
                  a: { signal-word: notice, says: x }
                ---
                «»hazards:
                  b: { signal-word: notice, says: x }
                """).ShouldReport(
            "DR1010",
            "'more.yaml' has a second document that begins here; only files of cases hold several, so put it into a file of its own.");

    [Fact]
    public void TrueAsFlag_ReportsDR1011() =>
        PackText.Of("""
            readings:
              a: { question: x, unit: V, lasting: «true» }
            """).ShouldReport(
            "DR1011",
            "'true' stands at 'lasting', and programs that read YAML disagree on what it is; write yes or no.");

    [Fact]
    public void YesAsFlag_DoesNotReportDR1011() =>
        PackText.Of("""
            readings:
              a: { question: x, unit: V, lasting: yes }
            """).ShouldNotReport("DR1011");

    [Fact]
    public void QuotedNullAsGrade_ReportsDR1011() =>
        PackText.Of("""
            findings:
              a: { title: x, grades: [ok, "«null»"] }
            """).ShouldReport(
            "DR1011",
            "'null' stands at 'grades', and programs that read YAML disagree on what it is; pick another word.");

    [Fact]
    public void NullInASentence_DoesNotReportDR1011() =>
        PackText.Of("""
            findings:
              a: { title: null and void, grades: [ok, bad] }
            """).ShouldNotReport("DR1011");
}
