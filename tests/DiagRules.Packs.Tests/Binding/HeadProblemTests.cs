using DiagRules.Model.Calculations;
using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Binding;

/// <summary>The head of a pack, its chassis, its money.</summary>
public class HeadProblemTests
{
    [Fact]
    public void NoPackYaml_ReportsDR1101() =>
        new PackText()
            .With("more.yaml", """
                hazards:
                  a: { signal-word: notice, says: x }
                """).ShouldReport(
            "DR1101",
            "'pack' is no pack: it has no readable 'pack.yaml', which says what the pack is.");

    [Fact]
    public void UnknownFormat_ReportsDR1102() =>
        PackText.WithHead("""
            format: «2»
            pack: demo
            version: 1.0.0
            title: x
            """).ShouldReport(
            "DR1102",
            "'format: 2' is not supported; this reader knows format 1.");

    [Fact]
    public void MalformedVersion_ReportsDR1104() =>
        PackText.WithHead("""
            format: 1
            pack: demo
            version: «1.0»
            title: x
            """).ShouldReport(
            "DR1104",
            "'1.0' is not a version; write three numbers, such as '1.0.0'.");

    [Fact]
    public void NoTitle_ReportsDR2002() =>
        PackText.WithHead("""
            «»format: 1
            pack: demo
            version: 1.0.0
            """).ShouldReport(
            "DR2002",
            "'pack.yaml' has no 'title', which pack.yaml must have; write for example 'title: Corrie LD4 tail lift'.");

    [Fact]
    public void UndeclaredChassis_ReportsDR1112() =>
        PackText.WithHead(PackText.Head + """
            chassis: [LD4]
            hazards:
              a: { signal-word: notice, says: x, only: [«LD5»] }
            """).ShouldReport(
            "DR1112",
            "No chassis 'LD5'; pack.yaml has 'LD4'. Did you mean 'LD4'?");

    [Fact]
    public void DeclaredChassis_DoesNotReportDR1112() =>
        PackText.WithHead(PackText.Head + """
            chassis: [LD4]
            hazards:
              a: { signal-word: notice, says: x, only: [LD4] }
            """).ShouldNotReport("DR1112");

    [Fact]
    public void ChassisOfAParameter_ReportsDR1112() =>
        PackText.Of("""
            parameters:
              a: { value: 5 A, for: { «LD4-S»: 6 A } }
            """).ShouldReport(
            "DR1112",
            "No chassis 'LD4-S'; pack.yaml has no 'chassis'.");

    [Fact]
    public void ReferenceMissingOnAChassis_ReportsDR1113() =>
        PackText.WithHead(PackText.Head + """
            chassis: [LD4, LD4-S]
            hazards:
              a: { signal-word: notice, says: x, only: [LD4-S] }
            access:
              b: { title: x, hazards: [«a»] }
            """).ShouldReport(
            "DR1113",
            "'b' refers to 'a', which is not there on chassis 'LD4' ('only: [LD4-S]'); give 'b' an 'only' as well, or take that of 'a' out.");

    [Fact]
    public void ReferenceOnTheSameChassis_DoesNotReportDR1113() =>
        PackText.WithHead(PackText.Head + """
            chassis: [LD4, LD4-S]
            hazards:
              a: { signal-word: notice, says: x, only: [LD4-S] }
            access:
              b: { title: x, hazards: [a], only: [LD4-S] }
            """).ShouldNotReport("DR1113");

    [Fact]
    public void TwoCurrencies_ReportsDR1114() =>
        PackText.WithHead(PackText.Head + """
            labour: 84 EUR/h
            specialist-cost: «900 GBP»
            """).ShouldReport(
            "DR1114",
            "'900 GBP' is in GBP, and pack.yaml(5,9) is in EUR; a pack keeps to one currency.");

    [Fact]
    public void OneCurrency_DoesNotReportDR1114() =>
        PackText.WithHead(PackText.Head + """
            labour: 84 EUR/h
            specialist-cost: 900 EUR
            """).ShouldNotReport("DR1114");

    [Fact]
    public void MoneyWithoutLabour_ReportsDR2002() =>
        PackText.Of("""
            access:
              b: { title: x, cost: «5 EUR» }
            """).ShouldReport(
            "DR2002",
            "'5 EUR' is money, and pack.yaml has no 'labour' to turn it into minutes; add for example 'labour: 84 EUR/h', or write minutes' worth.");

    [Fact]
    public void MinutesWorthWithoutLabour_DoesNotReportDR2002() =>
        PackText.Of("""
            access:
              b: { title: x, cost: 5 }
            """).ShouldNotReport("DR2002");

    [Fact]
    public void CoexistenceOfZero_ReportsDR4001() =>
        PackText.WithHead(PackText.Head + """
            coexistence: «0»
            """).ShouldReport(
            "DR4001",
            "'coexistence' is 0, and two faults at once are never impossible; write a small number such as '0.05'.");

    [Fact]
    public void UnknownLibrary_ReportsDR7004() =>
        PackText.WithHead(PackText.Head + """
            calculations: [«electrohydraulics@1.x»]
            """).ShouldReport(
            "DR7004",
            "No calculation library 'electrohydraulics' (1.x is asked for); the host has none.");

    [Fact]
    public void UnknownLibrary_NothingIsSaidAboutCallsThatMayBeInIt() =>
        PackText.WithHead(PackText.Head + """
            calculations: [winches@1.x]
            readings:
              pull: { from: "rope-pull(torque: 5 N.m)" }
            """).Load().Problems.Select(problem => problem.Code).ShouldBe(["DR7004"]);

    [Fact]
    public void LibraryThatIsTooOld_ReportsDR7004WithTheVersionsThereAre()
    {
        var problem = PackText.WithHead(PackText.Head + "calculations: [winches@2.x]")
            .Load(new PackLoaderOptions { Calculations = [Winches(1, 0), Winches(1, 4)] }).Problems.ShouldHaveSingleItem();

        (problem.Code, problem.Message).ShouldBe(("DR7004", "'winches' is asked for in version 2.x; the host has 1.4.0, 1.0.0."));
    }

    private static CalculationLibrary Winches(int major, int minor) => new("winches", new Version(major, minor, 0), []);

    [Fact]
    public void HeadKeyInASectionFile_ReportsDR2001() =>
        new PackText()
            .With("pack.yaml", PackText.Head)
            .With("more.yaml", """
                «labour»: 84 EUR/h
                hazards:
                  a: { signal-word: notice, says: x }
                """).ShouldReport(
            "DR2001",
            "'labour' has no place in a section file: it says what the whole pack is, so write it in pack.yaml.");

    [Fact]
    public void BaseThatIsNotThere_ReportsDR1103() =>
        PackText.WithHead(PackText.Head + """
            extends: [«electro-hydraulic-unit@1.x»]
            """).ShouldReport(
            "DR1103",
            "No pack 'electro-hydraulic-unit' (1.x is asked for) in the catalog, which has no version of it.");
}
