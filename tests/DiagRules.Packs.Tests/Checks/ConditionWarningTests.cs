using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Checks;

/// <summary>Conditions that decide nothing, overlap, or ask too much of a meter.</summary>
public class ConditionWarningTests
{
    [Fact]
    public void RangesThatDoNotMeet_ReportsDR3011() =>
        PackText.Demo(("blown: fuse-feed >= 11 V and fuse-load < 1 V", "blown: fuse-load > 3 V and «fuse-load < 1 V»")).ShouldReport(
            "DR3011",
            "'fuse-load < 1 V' makes this condition of 'pump-fuse' never hold: it does not meet 'fuse-load > 3 V'; mend one of the two.");

    [Fact]
    public void RangesThatMeet_DoesNotReportDR3011() =>
        PackText.Demo().ShouldNotReport("DR3011");

    [Fact]
    public void LimitOutsideWhatIsPlausible_ReportsDR3011() =>
        PackText.Demo(("blown: fuse-feed >= 11 V and fuse-load < 1 V", "blown: «fuse-feed >= 110 V» and fuse-load < 1 V")).ShouldReport(
            "DR3011",
            "'fuse-feed >= 110 V' makes this condition of 'pump-fuse' never hold: it lies outside what is plausible (0 V .. 32 V); mend one of the two.");

    [Fact]
    public void ConditionThatAlwaysHolds_ReportsDR3011() =>
        PackText.Demo(("repairs:\n", "rules:\n  r: { when: \"«pump-sound is runs or clicks or silent»\", advise: x }\nrepairs:\n")).ShouldReport(
            "DR3011",
            "'pump-sound is runs or clicks or silent' of 'r' holds whatever is observed, so it decides nothing; mend it, or take it out.");

    [Fact]
    public void KnownAndUnknownAtOnce_ReportsDR3011() =>
        PackText.Demo(("repairs:\n", "rules:\n  r: { when: unknown pump-sound and «pump-sound is silent», advise: x }\nrepairs:\n")).ShouldReport(
            "DR3011",
            "'pump-sound is silent' makes this condition of 'r' never hold: it does not meet 'unknown pump-sound'; mend one of the two.");

    [Fact]
    public void UnknownOrSomething_DoesNotReportDR3011() =>
        PackText.Demo(("repairs:\n", "rules:\n  r: { when: unknown pump-sound or pump-sound is silent, advise: x }\nrepairs:\n")).ShouldNotReport("DR3011");

    [Fact]
    public void ReadsThatOverlap_ReportsDR3012() =>
        PackText.Demo(("blown: fuse-feed >= 11 V and fuse-load < 1 V", "blown: «fuse-feed >= 10 V»")).ShouldReport(
            "DR3012",
            "'pump-fuse' can be read as 'whole' and as 'blown' at once, for example at fuse-feed 11 V, fuse-load 11 V; then the two contradict each other. Part them.");

    [Fact]
    public void RulesThatClash_ReportsDR3013() =>
        PackText.Demo(("repairs:\n", "rules:\n  first: { when: pump-sound is silent, settles: { pump-fuse: blown } }\n  «second»: { when: pump-sound is clicks or worse, settles: { pump-fuse: whole } }\nrepairs:\n")).ShouldReport(
            "DR3013",
            "'second' settles 'pump-fuse' as 'whole' and 'first' as 'blown' under one condition, for example at pump-sound silent. Part them.");

    [Fact]
    public void RulesThatDoNotMeet_DoesNotReportDR3013() =>
        PackText.Demo(("repairs:\n", "rules:\n  first: { when: pump-sound is silent, settles: { pump-fuse: blown } }\n  second: { when: pump-sound is clicks, settles: { pump-fuse: whole } }\nrepairs:\n")).ShouldNotReport("DR3013");

    [Fact]
    public void LimitFinerThanTheMeter_ReportsDR3014() =>
        PackText.Demo(
            ("fuse-load: { question: Volts behind the pump fuse, unit: V,", "fuse-load: { question: Volts behind the pump fuse, unit: V, accuracy: 2 V,"),
            ("fuse-load < 1 V", "fuse-load < «1 V»")).ShouldReport(
            "DR3014",
            "'1 V' is nearer to zero than 'fuse-load' can be measured (within 2.3 V there); answers near it stay unknown. Take a better meter, or a wider limit.");

    [Fact]
    public void LimitWiderThanTheMeter_DoesNotReportDR3014() =>
        PackText.Demo(("fuse-load: { question: Volts behind the pump fuse, unit: V,", "fuse-load: { question: Volts behind the pump fuse, unit: V, accuracy: 0.02 V,")).ShouldNotReport("DR3014");

    [Fact]
    public void MagnitudeThatIsUnusual_ReportsDR3107() =>
        PackText.Demo(
            ("readings:\n", "parameters:\n  small-drop: { value: «30 kV» }\nreadings:\n"),
            ("fuse-drop <= 0.3 V", "fuse-drop <= small-drop")).ShouldReport(
            "DR3107",
            "'30 kV' of 'small-drop' is far from what is usual (0.1 mV .. 2000 V); look at the unit and the decimal point.");
}
