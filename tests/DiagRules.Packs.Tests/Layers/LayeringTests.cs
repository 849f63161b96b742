using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Layers;

/// <summary>A pack over its bases.</summary>
public class LayeringTests
{
    private const string Unit = """
        hazards:
          hot: { signal-word: caution, says: Hot. }
          live: { signal-word: warning, says: Live. }
        findings:
          sound: { question: What do you hear?, grades: [runs, clicks, silent], background: { clicks: 0.01, silent: 0.02 } }
        causes:
          brushes-worn: { title: Brushes worn, share: 5, shows: { sound: { clicks: often, silent: 0.1 } }, hazards: [hot], reason: They wear. }
          fuse-blown: { title: Fuse blown, share: 2, shows: { sound: { silent: 0.9 } } }
        """;

    private static PackText Base(string sections = Unit, string id = "unit", string version = "1.0.0", string head = "") =>
        PackText.WithHead($"format: 1\npack: {id}\nversion: {version}\ntitle: Base\n{head}{sections}\n");

    private static PackText Lift(string sections, string extends = "[unit@1.x]") =>
        PackText.WithHead($"format: 1\npack: lift\nversion: 2.0.0\ntitle: Lift\nextends: {extends}\n{sections}\n");

    [Fact]
    public void EntryOfTheBase_IsThereWithItsOwnPlace()
    {
        var pack = Lift("").Over(Base()).Load().Require();

        pack.Id.ShouldBe("lift");
        pack.Title.ShouldBe("Lift");
        pack.Find<Cause>("fuse-blown")!.Place.ShouldBe(new SourcePlace("unit", "base-1/pack.yaml", 12, 3, 10));
    }

    [Fact]
    public void Override_GoesKeyByKey()
    {
        var pack = Lift("causes:\n  brushes-worn: { share: 9, shows: { sound: { clicks: 0.3 } } }").Over(Base()).Load().Require();

        var cause = pack.Find<Cause>("brushes-worn")!;
        cause.Share.ShouldBe(9);
        cause.Title.ShouldBe("Brushes worn");
        cause.Hazards.ShouldBe(["hot"]);
        cause.Shows[^1].ByGrade[1].ShouldBe([0.7, 0.3, 0], "a map of grades to probabilities is one value");
    }

    [Fact]
    public void MapsMerge_WhereTheyAreNoDistribution()
    {
        var pack = Lift("findings:\n  heat: { question: Hot?, grades: [no, yes] }\ncauses:\n  brushes-worn: { shows: { heat: { yes: 0.5 } } }").Over(Base()).Load().Require();

        pack.Find<Cause>("brushes-worn")!.Shows.Select(shown => pack.Nodes[shown.Child].Id).ShouldBe(["heat", "pattern", "sound"]);
    }

    [Fact]
    public void ListEdits_AddAndTakeAway()
    {
        var pack = Lift("causes:\n  brushes-worn: { hazards+: [live], hazards-: [hot] }").Over(Base()).Load().Require();

        pack.Find<Cause>("brushes-worn")!.Hazards.ShouldBe(["live"]);
    }

    [Fact]
    public void Remove_TakesAwayKeysAndEntries()
    {
        var pack = Lift("causes:\n  fuse-blown: remove\n  brushes-worn: { reason: remove }").Over(Base()).Load().Require();

        pack.Find("fuse-blown").ShouldBeNull();
        pack.Find<Cause>("brushes-worn")!.Reason.ShouldBeNull();
    }

    [Fact]
    public void Word_MeansWhatItMeansInThePackThatWroteIt()
    {
        var pack = Lift("words: { often: 0.4 }\ncauses:\n  mine: { title: Mine, share: 1, shows: { sound: { clicks: often } } }").Over(Base()).Load().Require();

        pack.Find<Cause>("brushes-worn")!.Shows[^1].ByGrade[1][1].ShouldBe(0.5);
        pack.Find<Cause>("mine")!.Shows[^1].ByGrade[1][1].ShouldBe(0.4);
    }

    [Fact]
    public void MemberWrittenOutAbove_OverridesTheCopyOfATemplateBelow()
    {
        var unit = Base("sets: { side: { left: left, right: right } }\ncauses:\n  ram-$side-leaks: { title: $side ram leaks, share: 8 }\n  hose-leaks: { title: Hose, share: 1 }");

        var pack = Lift("causes:\n  ram-left-leaks: { share: 7 }\n  ram-right-leaks: remove").Over(unit).Load().Require();

        pack.Causes.Select(cause => (cause.Id, cause.Title, cause.Share)).ShouldBe([("hose-leaks", "Hose", 1d), ("ram-left-leaks", "left ram leaks", 7d)]);
    }

    [Fact]
    public void BaseReachedByTwoWays_CountsOnceInOneVersion()
    {
        var left = Base("causes:\n  brushes-worn: { share: 6 }", "left", head: "extends: [unit@1.x]\n");
        var right = Base("causes:\n  mine: { title: Mine, share: 1 }", "right", head: "extends: [unit@1.0.x]\n");

        var pack = Lift("", "[left@1.x, right@1.x]").Over(Base(), Base(version: "1.1.0", sections: "causes:\n  other: { title: x, share: 1 }"), left, right).Load().Require();

        pack.Causes.Select(cause => (cause.Id, cause.Share)).ShouldBe([("brushes-worn", 6d), ("fuse-blown", 2d), ("mine", 1d)]);
    }

    [Fact]
    public void NewestVersionThatFits_IsTaken()
    {
        var pack = Lift("").Over(Base(), Base(version: "1.10.0", sections: "causes:\n  newest: { title: x, share: 1 }"), Base(version: "2.0.0")).Load().Require();

        pack.Causes.ShouldHaveSingleItem().Id.ShouldBe("newest");
    }

    [Fact]
    public void Head_IsHandedDownButForWhatAPackSaysOfItself()
    {
        var pack = Lift("unlisted: 3").Over(Base(head: "labour: 84 EUR/h\nunlisted: 5\nchassis: [LD4]\n")).Load().Require();

        (pack.Currency, pack.Unlisted, pack.Version).ShouldBe(("EUR", 3, "2.0.0"));
        pack.Chassis.ShouldBe(["LD4"]);
    }

    [Fact]
    public void MissingBase_ReportsDR1103() =>
        Lift("", "[«unite@1.x»]").Over(Base()).ShouldReport(
            "DR1103", "No pack 'unite' (1.x is asked for) in the catalog, which has no version of it. Did you mean 'unit'?");

    [Fact]
    public void VersionThatDoesNotFit_ReportsDR1104() =>
        Lift("", "[«unit@3.x»]").Over(Base()).ShouldReport("DR1104", "No version of 'unit' fits: 'lift' asks for 3.x; the catalog has 1.0.0.");

    [Fact]
    public void RangesThatNoVersionFits_ReportDR1104() =>
        Lift("", "[«unit@1.1.x», left@1.x]")
            .Over(Base(), Base(version: "1.1.0"), Base("", "left", head: "extends: [unit@1.0.x]\n"))
            .ShouldReport("DR1104", "No version of 'unit' fits: 'lift' asks for 1.1.x, 'left' asks for 1.0.x; the catalog has 1.1.0, 1.0.0.");

    [Fact]
    public void MalformedRange_ReportsDR1104() =>
        Lift("", "[unit@«^1»]").Over(Base()).ShouldReport(
            "DR1104", "'^1' is not a range of versions; write '1.2.3' for just that one, '1.2.x' for any 1.2, or '1.x' for any 1.");

    [Fact]
    public void PathAsBase_ReportsDR2003() =>
        Lift("", "[«../unit»@1.x]").Over(Base()).ShouldReport(
            "DR2003", "'../unit' is not an id: small letters, digits and single dashes, a letter first, at most 64 characters. Write 'unit'.");

    [Fact]
    public void PacksInACircle_ReportDR1105() =>
        Lift("", "[unit@1.x]").Over(Base(head: "extends: [lift@2.x]\n"), Lift("")).ShouldReport(
            "DR1105",
            "'unit' extends itself in the end: 'unit' extends 'lift' in base-1/pack.yaml(5,11); 'lift' extends 'unit' in pack.yaml(5,11). Take one of these out.");

    [Fact]
    public void BasesThatDisagree_ReportDR1106() =>
        Lift("", "[left@1.x, «right@1.x»]")
            .Over(Base(), Base("causes:\n  brushes-worn: { share: 6 }", "left", head: "extends: [unit@1.x]\n"), Base("causes:\n  brushes-worn: { share: 7 }", "right", head: "extends: [unit@1.x]\n"))
            .ShouldReport("DR1106", "'brushes-worn: share' is '6' in 'left' and '7' in 'right'; settle it by writing 'share' in this pack.");

    [Fact]
    public void DisagreementSettledAbove_IsNoProblem() =>
        Lift("causes:\n  brushes-worn: { share: 8 }", "[left@1.x, right@1.x]")
            .Over(Base(), Base("causes:\n  brushes-worn: { share: 6 }", "left", head: "extends: [unit@1.x]\n"), Base("causes:\n  brushes-worn: { share: 7 }", "right", head: "extends: [unit@1.x]\n"))
            .ShouldNotReport("DR1106");

    [Fact]
    public void NothingToRemove_ReportsDR1107() =>
        Lift("causes:\n  «fuse-blow»: remove").Over(Base()).ShouldReport("DR1107", "'fuse-blow: remove' finds no cause 'fuse-blow' to take away. Did you mean 'fuse-blown'?");

    [Fact]
    public void NoKeyToRemove_ReportsDR1107() =>
        Lift("causes:\n  fuse-blown: { «reasons»: remove }").Over(Base("causes:\n  fuse-blown: { title: x, share: 1, reason: y }")).Load()
            .Problems.ShouldContain(problem => problem.Code == "DR1107" && problem.Message == "'reasons: remove' finds no 'reasons' to take away. Did you mean 'reason'?");

    [Fact]
    public void RemovedButReferredTo_ReportsDR1108() =>
        Lift("hazards:\n  «hot»: remove").Over(Base()).ShouldReport(
            "DR1108", "'hot' is taken away here, but base-1/pack.yaml(11,110) still refers to it; change what refers to it as well.");

    [Fact]
    public void FindingRemovedButReadByARule_ReportsDR1108() =>
        Lift("findings:\n  «heat»: remove")
            .Over(Base("findings:\n  heat: { question: Hot, grades: [no, yes] }\nrules:\n  r: { when: heat is yes, advise: x }"))
            .ShouldReport("DR1108", "'heat' is taken away here, but base-1/pack.yaml(8,14) still refers to it; change what refers to it as well.");

    [Fact]
    public void EntryThatChangesItsSection_ReportsDR1109() =>
        Lift("effects:\n  «sound»: { grades: [a, b] }").Over(Base()).ShouldReport(
            "DR1109", "'sound' is a finding in 'unit' and an effect here; an id keeps its section, so give this one another id.");

    [Fact]
    public void ListEditOfAnEntryThatIsNew_ReportsDR1110() =>
        Lift("access:\n  cover-off: { title: x, «hazards+»: [hot] }").Over(Base()).ShouldReport(
            "DR1110", "'hazards+' changes a list of a base, and no base has this entry; write 'hazards' with the whole value.");

    [Fact]
    public void OverrideThatChangesNothing_ReportsDR1111() =>
        Lift("causes:\n  fuse-blown: { share: «2» }").Over(Base()).ShouldReport("DR1111", "'share' is '2' in 'unit' already; take it out here.");

    [Fact]
    public void OverriddenValue_RemembersTheBase()
    {
        var result = Lift("causes:\n  fuse-blown: { share: 5 % }").Over(Base()).Load();

        result.Problems.Single(problem => problem.Severity == Severity.Error).Place.Overrides.ShouldBe("unit");
    }

    [Fact]
    public void FaultInABase_IsReportedThere() =>
        Lift("").Over(Base("causes:\n  fuse-blown: { title: x, share: 5 % }")).Load()
            .Problems.Single(problem => problem.Severity == Severity.Error).Place.ShouldBe(new SourcePlace("unit", "base-1/pack.yaml", 6, 34, 3));
}
