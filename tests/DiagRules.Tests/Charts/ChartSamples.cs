using DiagRules.Charts;
using DiagRules.TestSupport;

namespace DiagRules.Tests.Charts;

/// <summary>Small invented packs to draw charts of.</summary>
internal static class ChartSamples
{
    /// <summary>Every check shows one finding, which somebody sees: a session knows all that a chart knows.</summary>
    public const string Seen = """
        specialist-cost: 400
        unlisted: 1
        findings:
          lamp: { title: Lamp on the box, grades: [on, off], background: { off: 0.01 } }
          sound: { question: "What do you hear?", grades: [runs, clicks, silent], background: { clicks: 0.01, silent: 0.01 } }
          tap: { title: A tap on the motor, grades: [no-change, runs], background: { runs: 0.01 } }
          brake: { question: "Is the brake set?", grades: [set, off], background: { off: 0.01 } }
        causes:
          fuse-blown: { title: Fuse blown, share: 4, repair: renew-fuse, shows: { lamp: { off: 0.95 }, sound: { silent: 0.95 } } }
          brushes-worn: { title: Brushes worn, share: 6, repair: { renew-brushes: 0.9 }, hazards: [hot-motor], shows: { sound: { clicks: 0.8, silent: 0.1 }, tap: { runs: 0.7 } } }
          motor-seized: { title: Motor seized, share: 2, repair: exchange-motor, shows: { sound: { clicks: 0.9 } } }
          brake-off: { title: Brake not set, share: 3, repair: set-brake, shows: { brake: { off: 0.98 }, sound: { silent: 0.97 } } }
        complaints:
          dead: { title: It does nothing, means: { sound: clicks or worse } }
        rules:
          no-fuse-yet: { when: lamp is off and unknown tap, defer: [renew-fuse], advise: Find out first what blew the fuse., reason: It may blow again. }
        access:
          cover-off: { title: Cover off, minutes: 5, steps: [Four bolts.] }
        hazards:
          hot-motor: { signal-word: caution, symbol: W017, says: A stalled motor burns skin., avoid: Let it cool., clears: Housing cool. }
          unfused: { signal-word: warning, symbol: W012, says: The feed is not fused., avoid: Rings off. }
        checks:
          look-at-lamp: { title: Look at the lamp, gives: [lamp], minutes: 2, needs: [cover-off], hazards: [unfused] }
          tap-motor: { title: Tap the motor, gives: [tap], minutes: 3, needs: [cover-off], skip-if: sound is silent }
        repairs:
          renew-fuse: { title: Renew the fuse, minutes: 5, needs: [cover-off], parts: [fuse 100 A], fasteners: [{ at: nuts M8, across-flats: 13 mm, torque: 12 N.m }], hazards: [unfused], verify-by: [look-at-lamp] }
          renew-brushes: { title: Renew the brushes, minutes: 60, needs: [cover-off], hazards: [hot-motor] }
          exchange-motor: { title: Exchange the motor, minutes: 120, needs: [cover-off] }
          set-brake: { title: Set the brake, minutes: 1, skill: owner }

        """;

    /// <summary>One check that decides three findings from readings, and a repair that comes after a check which decides nothing.</summary>
    public const string Measured = """
        specialist-cost: 400
        unlisted: 1
        readings:
          feed: { question: Volts before the fuse, unit: V }
          load: { question: Volts behind the fuse, unit: V }
          drop: { from: feed - load }
          current: { question: Amperes in the cable, unit: A }
          temperature: { question: Temperature of the housing, unit: degC }
        parameters:
          feed-least: { value: 11 V }
        findings:
          supply: { title: Supply, grades: [good, weak], bands: { of: feed, rising: [weak, feed-least, good] }, background: { weak: 0.01 } }
          fuse: { title: Fuse, grades: [whole, blown], read: { whole: drop <= 0.3 V, blown: drop > 0.3 V }, background: { blown: 0.01 } }
          flow: { title: Current, grades: [normal, low, high], bands: { of: current, rising: [low, 20 A, normal, 90 A, high] }, background: { low: 0.01, high: 0.01 } }
        causes:
          battery-flat: { title: Battery flat, share: 4, repair: charge, shows: { supply: { weak: 0.95 }, flow: { low: 0.9 } } }
          fuse-blown: { title: Fuse blown, share: 4, repair: renew-fuse, shows: { fuse: { blown: 0.98 }, flow: { low: 0.98 } } }
          motor-stalled: { title: Motor stalled, share: 3, repair: exchange-motor, shows: { flow: { high: 0.95 } } }
          coil-open: { title: Coil open, share: 3, repair: renew-coil, shows: { flow: { low: 0.95 } } }
        rules:
          too-hot: { when: temperature > 60 degC, defer: [exchange-motor], reason: It burns. }
        checks:
          measure-all: { title: Measure the circuit, gives: [feed, load, current], minutes: 5 }
          feel-motor: { title: Feel whether the motor is cool, gives: [temperature], minutes: 1 }
        repairs:
          charge: { title: Charge the battery, minutes: 30 }
          renew-fuse: { title: Renew the fuse, minutes: 20 }
          exchange-motor: { title: Exchange the motor, minutes: 120, after: [feel-motor] }
          renew-coil: { title: Renew the coil, minutes: 60 }

        """;

    public static DiagnosisEngine Engine(string sections) => DiagnosisEngine.Compile(PackText.Of(sections).Load().Require());

    public static TroubleshootingChart Draw(string sections, string? complaint = null, ChartOptions? options = null) =>
        TroubleshootingChart.Draw(Engine(sections).Start(new SessionOptions { Complaint = complaint }), options);

    /// <summary>A chart drawn as far as it goes.</summary>
    public static ChartOptions Whole => new() { Places = 2000, Depth = 50, Probability = 1e-4 };
}
