using System.Runtime.CompilerServices;
using DiagRules.Electrohydraulics;
using DiagRules.Model.Calculations;
using DiagRules.Packs;
using DiagRules.Plugins;

namespace DiagRules.Tests.Plugins;

/// <summary>A plugin that throws, lies or never ends: its reading is unknown, the diagnosis says so, and everything else goes on.</summary>
public sealed class ContainmentTests : IDisposable
{
    private readonly PluginCopies _copies = new();

    public ContainmentTests() => _copies.Add(PluginCopies.Awkward);

    public void Dispose() => _copies.Dispose();

    [Theory]
    [InlineData("throwing", "it threw InvalidOperationException: The table has no such row")]
    [InlineData("not-a-number", "what it gave is not a number")]
    [InlineData("infinite", "it gave infinity")]
    public void Diagnose_CalculationFails_ReadingIsUnknownAndSaysWhy(string calculation, string reason)
    {
        using var plugins = PluginFolder.Load(_copies.Folder);
        var session = Start(plugins.Libraries, calculation);

        var diagnosis = session.Diagnose();

        diagnosis.Notes.ShouldContain($"'worked-out' is unknown: '{calculation}' with volts 12 V failed, because {reason} (DR7003).");
        diagnosis.Readings.Select(reading => reading.Reading).ShouldBe(["feed", "stall-current"]);
        diagnosis.Readings[1].Value.ShouldBe(200, 1e-9);
        diagnosis.Findings.Select(finding => finding.Finding).ShouldBe(["stall"]);
        diagnosis.Hypotheses[0].Cause.ShouldBe("winding-shorted");
    }

    [Fact]
    public void Diagnose_CalculationHasNoAnswer_SaysWhyWithoutBlamingIt()
    {
        var session = Start([], "doubling", text => text
            .Replace("doubling(volts: feed)", "relay-pull-in-hot(pull-in: feed, temperature: 900 degC)", StringComparison.Ordinal)
            .Replace("awkward@1.x, ", "", StringComparison.Ordinal));

        session.Diagnose().Notes.ShouldContain(
            "'worked-out' is unknown: 'relay-pull-in-hot' with pull-in 12 V, temperature 900 degC, rated-at 23 degC cannot be computed, because " +
            "'temperature' is 900 degC and must lie between -60 degC and 200 degC.");
    }

    [Fact]
    public void Diagnose_CalculationInACondition_LeavesTheConditionOpenAndSaysSo()
    {
        using var plugins = PluginFolder.Load(_copies.Folder);
        var session = Start(plugins.Libraries, "doubling", text => text + """

            rules:
              by-lie: { when: "not-a-number(volts: feed) > 3 V", advise: Never said., reason: None. }
            """);

        var diagnosis = session.Diagnose();

        diagnosis.Advice.ShouldBeEmpty();
        diagnosis.Notes.ShouldContain("A condition of 'by-lie' stays open: 'not-a-number' with volts 12 V failed, because what it gave is not a number (DR7003).");
        diagnosis.Readings.Select(reading => reading.Reading).ShouldBe(["feed", "stall-current", "worked-out"]);
    }

    /// <summary>A finite lie is beyond any guard but the range in which its reading is plausible.</summary>
    [Fact]
    public void Diagnose_DerivedReadingIsNotPlausible_CountsAsUnknown()
    {
        using var plugins = PluginFolder.Load(_copies.Folder);

        var guarded = Start(plugins.Libraries, "wrong-sign").Diagnose();
        var believed = Start(plugins.Libraries, "wrong-sign", text => text.Replace(", plausible: 0 V .. 32 V }", " }", StringComparison.Ordinal)).Diagnose();

        guarded.Readings.Select(reading => reading.Reading).ShouldNotContain("worked-out");
        guarded.Notes.ShouldContain("'worked-out' comes to -12 V, outside the plausible 0 V .. 32 V; it counts as unknown.");
        believed.Readings.Single(reading => reading.Reading == "worked-out").Value.ShouldBe(-12);
    }

    [Fact]
    public void Diagnose_CalculationNeverEnds_PluginIsSwitchedOffAndTheSessionGoesOn()
    {
        using var plugins = PluginFolder.Load([_copies.Folder], new PluginOptions { TimeLimit = TimeSpan.FromMilliseconds(50) });
        var session = Start(plugins.Libraries, "never-ending");

        var diagnosis = session.Diagnose();

        const string SwitchedOff = "plugin 'awkward 1.0.0' is switched off since 'never-ending' ran longer than 50 ms";
        diagnosis.Notes.ShouldContain($"'worked-out' is unknown: 'never-ending' with volts 12 V failed, because {SwitchedOff} (DR7003).");
        diagnosis.Readings.Select(reading => reading.Reading).ShouldBe(["feed", "stall-current"]);
        diagnosis.Hypotheses[0].Cause.ShouldBe("winding-shorted");
        plugins.Libraries[0].Find("doubling")!.Compute([12]).ShouldBe(CalculationResult.Failed(SwitchedOff));
    }

    [Fact]
    public void Compute_FromManyThreads_EachGetsItsOwnAnswer()
    {
        using var plugins = PluginFolder.Load([_copies.Folder], new PluginOptions { TimeLimit = TimeSpan.FromMinutes(5) });
        var doubling = plugins.Libraries[0].Find("doubling")!;

        var answers = Enumerable.Range(0, 2_000).AsParallel().AsOrdered().Select(i => doubling.Compute([i]).Value).ToList();

        answers.ShouldBe(Enumerable.Range(0, 2_000).Select(i => 2.0 * i));
    }

    [Fact]
    public void Compute_ThatGoesWell_AllocatesNothing()
    {
        using var plugins = PluginFolder.Load([_copies.Folder], new PluginOptions { TimeLimit = TimeSpan.FromMinutes(5) });
        var doubling = plugins.Libraries[0].Find("doubling")!;
        Repeat(doubling, 100);

        var before = GC.GetAllocatedBytesForCurrentThread();
        Repeat(doubling, 100);

        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBe(0);
    }

    [Fact]
    public void Dispose_PackOutlivesThePlugin_NothingOfThePluginStays()
    {
        var (session, context) = DiagnoseAndUnload();

        for (var i = 0; i < 50 && context.IsAlive; i++)
        {
            GC.Collect();
            GC.WaitForPendingFinalizers();
        }

        context.IsAlive.ShouldBeFalse();
        session.Observe("feed", "11 V");
        session.Diagnose().Notes.ShouldContain("'worked-out' is unknown: 'doubling' with volts 11 V failed, because plugin 'awkward 1.0.0' is unloaded (DR7003).");
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private (DiagnosisSession Session, WeakReference Context) DiagnoseAndUnload()
    {
        var plugins = PluginFolder.Load(_copies.Folder);
        var session = Start(plugins.Libraries, "doubling");
        session.Diagnose().Readings.Single(reading => reading.Reading == "worked-out").Value.ShouldBe(24);
        plugins.Libraries[0].Find("throwing")!.Compute([1]).IsFailure.ShouldBeTrue();
        var context = plugins.Contexts.ShouldHaveSingleItem();
        plugins.Dispose();
        plugins.Dispose();
        return (session, context);
    }

    private static void Repeat(ICalculation calculation, int times)
    {
        for (var i = 0; i < times; i++)
        {
            calculation.Compute([i]);
        }
    }

    private static DiagnosisSession Start(IReadOnlyList<CalculationLibrary> plugins, string calculation, Func<string, string>? change = null)
    {
        var text = $$"""
            format: 1
            pack: winch
            version: 1.0.0
            title: A small winch
            calculations: [awkward@1.x, electrohydraulics@1.x]
            readings:
              feed: { question: Volts at the motor, unit: V, plausible: 0 V .. 40 V }
              worked-out: { from: "{{calculation}}(volts: feed)", unit: V, plausible: 0 V .. 32 V }
              stall-current: { from: "locked-rotor-current(supply: feed, resistance: 60 mohm)" }
            findings:
              stall: { title: Current, grades: [usual, high], bands: { of: stall-current, rising: [usual, 150 A, high] }, background: { high: 0.01 } }
              volts: { title: Volts, grades: [there, low], bands: { of: worked-out, rising: [low, 5 V, there] }, background: { low: 0.01 } }
            causes:
              winding-shorted: { title: Winding shorted, share: 2, shows: { stall: { high: 0.9 } } }
              cable-broken: { title: Cable broken, share: 3, shows: { volts: { low: 0.9 } } }
            checks:
              measure: { title: Measure, gives: [feed], minutes: 3 }
            """;
        var loader = new PackLoader(new PackLoaderOptions { Calculations = [.. plugins, ElectrohydraulicsLibrary.Create()] });
        var pack = loader.Load(PackFiles.FromText(("pack.yaml", change is null ? text : change(text)))).Require();
        var session = DiagnosisEngine.Compile(pack).Start();
        session.Observe("feed", "12 V").Problem.ShouldBeNull();
        return session;
    }
}
