using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Checks;

/// <summary>Warnings and notes: the pack loads all the same.</summary>
public class WarningTests
{
    [Fact]
    public void UnusedParameter_ReportsDR2012() =>
        PackText.Demo(("readings:\n", "parameters:\n  «rated-load»: { value: 750 kg }\nreadings:\n")).ShouldReport(
            "DR2012",
            "'rated-load' in 'parameters' is used nowhere; refer to it, or take it out.");

    [Fact]
    public void UsedParameter_DoesNotReportDR2012() =>
        PackText.Demo(
            ("readings:\n", "parameters:\n  small-drop: { value: 0.3 V }\nreadings:\n"),
            ("fuse-drop <= 0.3 V", "fuse-drop <= small-drop")).ShouldNotReport("DR2012");

    [Fact]
    public void MinutesOfAQuestionThatACheckAsks_ReportsDR2012() =>
        PackText.Demo(
            ("gives: [fuse-feed, fuse-load]", "gives: [fuse-feed, fuse-load, pump-sound]"),
            ("    question: What do you hear from the pump?\n", "    question: What do you hear from the pump?\n    «minutes»: 3\n"),
            ("verify-by: [pump-sound] }\n  exchange", "verify-by: [measure-fuse] }\n  exchange"),
            ("90, verify-by: [pump-sound]", "90, verify-by: [measure-fuse]")).ShouldReport(
            "DR2012",
            "'minutes' of 'pump-sound' counts for nothing, since a check gives it; move it to the check, or take it out.");

    [Fact]
    public void SystemNotListed_ReportsDR2013() =>
        PackText.Demo(("system: supply", "system: «suply»")).ShouldReport(
            "DR2013",
            "No system 'suply'; pack.yaml lists 'motor' and 'supply'. Did you mean 'supply'?");

    [Fact]
    public void SystemListed_DoesNotReportDR2013() =>
        PackText.Demo().ShouldNotReport("DR2013");

    [Fact]
    public void AbsoluteCertainty_ReportsDR4006() =>
        PackText.Demo(("shows: { pump-sound: { clicks: 0.8 } }", "shows: { «pump-sound»: { clicks: 1 } }")).ShouldReport(
            "DR4006",
            "'brushes-worn' shows 'pump-sound: clicks' with probability 1, and people are asked for it: one odd observation will rule this cause out; write 0.98 or so.");

    [Fact]
    public void CauseShowsNothing_ReportsDR4012() =>
        PackText.Demo(("  brushes-worn: { title: Brushes worn, system: motor, share: 5, shows: { pump-sound: { clicks: 0.8 } }", "  «brushes-worn»: { title: Brushes worn, system: motor, share: 5")).ShouldReport(
            "DR4012",
            "'brushes-worn' shows nothing, so no observation speaks for it; say under 'shows' what it does.");

    [Fact]
    public void CausesAlike_ReportsDR4013() =>
        PackText.Demo(("  motor-seized: { title: Motor seized, system: motor, share: 3, shows: { pump-sound: { clicks: 0.2, silent: 0.5 } }", "  «motor-seized»: { title: Motor seized, system: motor, share: 3, shows: { pump-sound: { clicks: 0.8 } }")).ShouldReport(
            "DR4013",
            "'motor-seized' cannot be told from 'brushes-worn': both show 'pump-sound' alike; add a finding, or join them.");

    [Fact]
    public void FindingThatNothingShows_ReportsDR4014() =>
        PackText.Demo(("causes:\n", "  «oil»: { question: Is there oil?, grades: [no, yes], background: { yes: 0.1 } }\ncauses:\n")).ShouldReport(
            "DR4014",
            "'oil' is shown by no cause and no effect, so observing it weighs nothing; say under 'shows' what lets it appear.");

    [Fact]
    public void FindingKnownToRules_DoesNotReportDR4014() =>
        PackText.Demo(("causes:\n", "  oil: { question: Is there oil, grades: [no, yes] }\nrules:\n  r: { when: oil is yes, advise: x }\ncauses:\n")).ShouldNotReport("DR4014");

    [Fact]
    public void GradeWithoutCause_ReportsDR4015() =>
        PackText.Demo(("grades: [runs, clicks, silent]", "grades: [runs, «slow», clicks, silent]")).ShouldReport(
            "DR4015",
            "'slow' of 'pump-sound' is shown by nothing and has no background, so observing it is impossible; say what shows it, or give it a small background.");

    [Fact]
    public void GradeWithBackground_DoesNotReportDR4015() =>
        PackText.Demo(
            ("grades: [runs, clicks, silent]", "grades: [runs, slow, clicks, silent]"),
            ("background: { clicks", "background: { slow: 0.01, clicks")).ShouldNotReport("DR4015");

    [Fact]
    public void FindingOutOfReach_ReportsDR4016() =>
        PackText.Demo(
            ("causes:\n", "  «heat»: { title: Heat, grades: [no, yes], background: { yes: 0.1 } }\ncauses:\n"),
            ("{ pump-sound: { clicks: 0.8 }", "{ heat: { yes: 0.5 }, pump-sound: { clicks: 0.8 }")).ShouldReport(
            "DR4016",
            "'heat' can be observed by nobody: it has no question, no check gives it, nothing reads or settles it; add one of these, or make it an effect.");

    [Fact]
    public void ShareOfNothing_ReportsDR4017() =>
        PackText.Demo(
            ("share: 4", "share: «0»"),
            ("share: 3", "share: 5")).ShouldReport(
            "DR4017",
            "'fuse-fatigued' has a share of 0, so it is never found; give it a small one, or take the cause out.");

    [Fact]
    public void ShareOverHalf_ReportsDR4017() =>
        PackText.Demo(("share: 3", "share: «30»")).ShouldReport(
            "DR4017",
            "'motor-seized' has 73.1 % of all shares; a cause behind more than half of the complaints is rarely meant.");

    [Fact]
    public void TooLittleUnlisted_ReportsDR4017() =>
        PackText.Demo(("systems:", "unlisted: «0.05»\nsystems:")).ShouldReport(
            "DR4017",
            "'unlisted' is 0.4 % of all shares; no list is that complete, so what it lacks will be blamed on what it has.");

    [Fact]
    public void EnoughUnlisted_DoesNotReportDR4017() =>
        PackText.Demo(("systems:", "unlisted: 1\nsystems:")).ShouldNotReport("DR4017");

    [Fact]
    public void CauseWithoutRepair_ReportsDR5005() =>
        PackText.Demo(
            ("  brushes-worn:", "  «brushes-worn»:"),
            (", repair: renew-brushes", ""),
            ("  renew-brushes: { title: Renew the brushes, minutes: 60, verify-by: [pump-sound] }\n", "")).ShouldReport(
            "DR5005",
            "'brushes-worn' has no 'repair'; name what cures it.");

    [Fact]
    public void RepairWithoutProof_ReportsDR5006() =>
        PackText.Demo(("  renew-brushes: { title: Renew the brushes, minutes: 60, verify-by: [pump-sound] }", "  «renew-brushes»: { title: Renew the brushes, minutes: 60 }")).ShouldReport(
            "DR5006",
            "'renew-brushes' has no 'verify-by'; name the checks that prove it.");

    [Fact]
    public void CheckWithoutTime_ReportsDR5007() =>
        PackText.Demo(
            ("  measure-fuse: {", "  «measure-fuse»: {"),
            ("gives: [fuse-feed, fuse-load], minutes: 4", "gives: [fuse-feed, fuse-load]")).ShouldReport(
            "DR5007",
            "'measure-fuse' costs no time, so it is always worth doing; write its 'minutes'.");

    [Fact]
    public void HazardWithoutAvoid_ReportsDR5009() =>
        PackText.Demo(
            ("access:\n", "hazards:\n  «hot»: { signal-word: caution, says: x, clears: y }\naccess:\n"),
            ("title: Cover off", "title: Cover off, hazards: [hot]")).ShouldReport(
            "DR5009",
            "'hot' has no 'avoid'; say how to keep out of its way, and what makes it go away.");

    [Fact]
    public void WholeHazard_DoesNotReportDR5009() =>
        PackText.Demo(
            ("access:\n", "hazards:\n  hot: { signal-word: caution, says: x, avoid: y, clears: z }\naccess:\n"),
            ("title: Cover off", "title: Cover off, hazards: [hot]")).ShouldNotReport("DR5009");

    [Fact]
    public void StepNamesADanger_ReportsDR5010() =>
        PackText.Demo(("title: Cover off", "title: Cover off, steps: [Mind the «hot» motor.]")).ShouldReport(
            "DR5010",
            "'hot' stands in a step of 'cover-off', which has no hazard; name what can hurt under 'hazards'.");

    [Fact]
    public void StepNamesADangerBesideItsHazard_DoesNotReportDR5010() =>
        PackText.Demo(
            ("access:\n", "hazards:\n  hot: { signal-word: caution, says: x, avoid: y, clears: z }\naccess:\n"),
            ("title: Cover off", "title: Cover off, hazards: [hot], steps: [Mind the hot motor.]")).ShouldNotReport("DR5010");

    [Fact]
    public void IntermittentProvedOnce_ReportsDR5011() =>
        PackText.Demo(
            ("share: 5, shows", "share: 5, intermittent: often, shows"),
            ("minutes: 60, verify-by", "minutes: 60, «verify-by»")).ShouldReport(
            "DR5011",
            "'brushes-worn' comes and goes (0.5), but 'renew-brushes' is proved once ('pump-sound'); write '{ check: pump-sound, times: 10 }'.");

    [Fact]
    public void IntermittentProvedOften_DoesNotReportDR5011() =>
        PackText.Demo(
            ("share: 5, shows", "share: 5, intermittent: often, shows"),
            ("minutes: 60, verify-by: [pump-sound]", "minutes: 60, verify-by: [{ check: pump-sound, times: 10 }]")).ShouldNotReport("DR5011");

    [Fact]
    public void DangerNotCleared_ReportsDR5013() =>
        PackText.Demo(
            ("access:\n", "hazards:\n  drop: { signal-word: danger, says: It drops., avoid: Keep out., clears: Platform on the ground. }\naccess:\n  grounded: { title: Platform let down, minutes: 1 }\n"),
            ("needs: [cover-off]", "needs: [cover-off], hazards: [«drop»]"),
            ("title: Cover off", "title: Cover off, needs: [grounded], excludes: [grounded]"),
            ("title: Cover off, needs: [grounded], ", "title: Cover off, ")).ShouldReport(
            "DR5013",
            "'measure-fuse' has the danger 'drop' and needs no access state that clears it (Platform on the ground.); 'grounded' could, or accept it with a reason.");

    [Fact]
    public void DangerCleared_DoesNotReportDR5013() =>
        PackText.Demo(
            ("access:\n", "hazards:\n  drop: { signal-word: danger, says: It drops., avoid: Keep out., clears: Platform on the ground. }\naccess:\n  grounded: { title: Platform let down, minutes: 1 }\n"),
            ("needs: [cover-off]", "needs: [cover-off, grounded], hazards: [drop]")).ShouldNotReport("DR5013");

    [Fact]
    public void FileWithoutEntries_ReportsDR1012() =>
        new PackText()
            .With("pack.yaml", PackText.Head)
            .With("more.yaml", """
                # nothing yet
                """).ShouldReport(
            "DR1012",
            "'more.yaml' holds no entries.");
}
