using DiagRules;
using DiagRules.Electrohydraulics;
using DiagRules.Model;
using DiagRules.Packs;

namespace DiagRules.Samples;

internal static class Embedding
{
    public static void Run(string packFolder)
    {
        // begin
        var options = new PackLoaderOptions { Calculations = [ElectrohydraulicsLibrary.Create()] };
        var pack = new PackLoader(options).Load(packFolder).Require();     // once; says what is wrong, and where
        var engine = DiagnosisEngine.Compile(pack);                        // once; share it between all jobs

        var session = engine.Start(new SessionOptions { Complaint = "will-not-lift" });    // one per job
        session.Observe("power-unit", "clicks-once", Skill.Owner);
        session.Observe("contactor-in-volts", "25.1 V", Skill.Workshop);
        session.Observe("contactor-out-volts", "0.1 V", Skill.Workshop);
        session.Observe("coil-volts", "24.8 V", Skill.Workshop);

        var diagnosis = session.Diagnose();
        foreach (var hypothesis in diagnosis.Hypotheses.Take(3))
        {
            Console.WriteLine($"{hypothesis.Title}: {hypothesis.Confidence:P0}");
        }

        Console.WriteLine($"Next: {diagnosis.Next[0].Title}, {diagnosis.Next[0].Minutes} minutes");
        // end
    }
}
