using DiagRules.Model;
using DiagRules.Packs;

namespace DiagRules.Tests;

/// <summary>A small invented lift that shows every mechanism of a session.</summary>
internal static class SmallLift
{
    private const string Text = """
        format: 1
        pack: small-lift
        version: 1.0.0
        title: A small lift
        chassis: [SL1, SL2]
        labour: 60 EUR/h
        specialist-cost: 300 EUR
        unlisted: 2
        trust: { owner: 0.9 }

        readings:
          feed-volts: { question: Volts before the fuse, unit: V, plausible: 0 V .. 32 V }
          load-volts: { question: Volts behind the fuse, unit: V, plausible: 0 V .. 32 V }
          fuse-drop: { from: feed-volts - load-volts }
          coil-volts: { question: Volts at the coil, unit: V, plausible: 0 V .. 32 V, accuracy: 0.2 V, lasting: yes }

        parameters:
          coil-least: { value: 18 V, for: { SL2: 9 V } }

        findings:
          fuse:
            title: The fuse
            grades: [whole, blown]
            lasting: yes
            read: { whole: feed-volts >= 11 V and fuse-drop <= 0.3 V, blown: feed-volts >= 11 V and load-volts < 1 V }
            background: { blown: 0.01 }
          coil-feed: { title: Feed of the coil, grades: [arrives, missing], lasting: yes, background: { missing: 0.01 }, bands: { of: coil-volts, rising: [missing, coil-least, arrives] } }
          sound:
            question: What do you hear?
            grades: [runs, slow, clicks, silent]
            background: { slow: 0.02, clicks: 0.01, silent: 0.01 }
          after-tap: { title: A tap on the motor, grades: [no-change, runs], background: { runs: 0.02 } }
          cab-switch: { question: "Is the switch in the cab on?", grades: [on, off], lasting: yes, background: { off: 0.02 } }
          oil: { question: "Is there oil in the tank?", grades: [enough, low], lasting: yes, background: { low: 0.05 } }

        causes:
          fuse-tired: { title: Fuse broken from age, share: 4, repair: renew-fuse, shows: { fuse: { blown: 0.98 }, sound: { silent: 0.9 } } }
          brushes-worn: { title: Brushes worn, share: 8, intermittent: 0.6, repair: { renew-brushes: 0.9, exchange-motor: 1 }, hazards: [hot-motor],
              shows: { sound: { slow: 0.2, clicks: 0.7 }, after-tap: { runs: 0.7 } } }
          relay-open: { title: Relay coil open, share: 3, repair: renew-relay, shows: { sound: { silent: 0.95 } } }
          wire-broken: { title: Wire to the coil broken, share: 3, intermittent: often, repair: mend-wire, shows: { sound: { silent: 0.95 }, coil-feed: { missing: 0.95 } } }
          oil-lost: { title: Oil lost, share: 2, repair: fill-oil, shows: { oil: { low: 0.95 }, sound: { slow: 0.5 } } }

        preconditions:
          switched-off: { title: Switched off in the cab, share: 2, must: cab-switch is on, restore: Switch it on., shows: { sound: { silent: 0.95 }, cab-switch: { off: 0.95 } } }

        complaints:
          dead: { title: It does nothing, means: { sound: silent } }
          drips: { title: It loses oil, means: { oil: low }, shares: { oil-lost: 9, fuse-tired: 1 } }

        rules:
          no-new-fuse-yet:
            when: fuse is blown and unknown after-tap
            advise: Not yet a new fuse.
            defer: [renew-fuse]
            hazards: [hot-fuse]
            reason: It may open again.
          feed-is-there:
            when: coil-feed is arrives
            rule-out: [wire-broken]
            reason: The wire brings it.
          silent-from-volts:
            when: coil-volts < 1 V and feed-volts < 1 V
            settles: { sound: silent }
            reason: Nothing can turn.

        checks:
          measure-fuse: { title: Measure at the fuse, gives: [feed-volts, load-volts], minutes: 4, skill: owner-with-meter, tools: [multimeter] }
          measure-coil: { title: Measure at the coil, gives: [coil-volts], minutes: 3, needs: [cover-off], tools: [multimeter], hazards: [hot-motor], skip-if: sound is runs }
          tap: { title: Tap the motor, gives: [after-tap], minutes: 2, needs: [cover-off], alters: [sound], skip-if: sound is runs or silent }

        access:
          cover-off: { title: Cover off, minutes: 10 }

        hazards:
          hot-motor: { signal-word: caution, symbol: W017, says: The motor is hot., avoid: Let it cool., clears: Cool to the hand. }
          hot-fuse: { signal-word: warning, symbol: W012, says: The feed is live., avoid: Isolate., clears: Isolator off. }

        repairs:
          renew-fuse: { title: Renew the fuse, minutes: 5, cost: 2 EUR, verify-by: [measure-fuse] }
          renew-brushes: { title: Renew the brushes, minutes: 40, cost: 30 EUR, needs: [cover-off], verify-by: [{ check: sound, times: 5 }] }
          exchange-motor: { title: Exchange the motor, minutes: 60, cost: 200 EUR, needs: [cover-off], verify-by: [{ check: sound, times: 5 }] }
          renew-relay: { title: Renew the relay, minutes: 15, cost: 20 EUR, after: [measure-coil], needs: [cover-off], verify-by: [sound] }
          mend-wire: { title: Mend the wire, minutes: 30, verify-by: [{ check: measure-coil, times: 5 }] }
          fill-oil: { title: Fill up, minutes: 10, cost: 10 EUR, verify-by: [oil] }
        """;

    public static Pack Pack { get; } = new PackLoader().Load(PackFiles.FromText(("pack.yaml", Text))).Require();

    public static DiagnosisEngine Engine { get; } = DiagnosisEngine.Compile(Pack);

    public static DiagnosisSession Start(string? complaint = null, params (string Id, string Value)[] observations)
    {
        var session = Engine.Start(new SessionOptions { Complaint = complaint });
        foreach (var (id, value) in observations)
        {
            session.Observe(id, value).Problem.ShouldBeNull();
        }

        return session;
    }

    public static double ConfidenceOf(this DiagnosisSession session, string cause) =>
        session.Diagnose().Hypotheses.Single(hypothesis => hypothesis.Cause == cause).Confidence;

    public static string? GradeOf(this DiagnosisSession session, string finding) =>
        session.Diagnose().Findings.SingleOrDefault(known => known.Finding == finding)?.Grade;
}
