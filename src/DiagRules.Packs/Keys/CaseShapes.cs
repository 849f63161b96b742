using static DiagRules.Packs.Keys.Forms;

namespace DiagRules.Packs.Keys;

/// <summary>The keys of recorded cases.</summary>
internal static class CaseShapes
{
    /// <summary>One observation: an id with its value, or a repair that was tried.</summary>
    public static readonly Shape Observation = new(
        "an observation",
        new KeySpec("by", Skill, "Who observed it."),
        new KeySpec("trust", new ScalarForm(ScalarKind.Trust), "How far it is believed: 0..1, or 'doubtful'; the observer's own trust when left out."),
        new KeySpec("while", new ScalarForm(ScalarKind.Word) { Words = ["failing", "working"] }, "Whether the machine was failing at that moment, as it is taken to be, or working."),
        new KeySpec("at", new ScalarForm(ScalarKind.Time), "When."),
        new KeySpec("note", Sentence, "A remark."),
        new KeySpec("tried", Id, "The repair that was tried."),
        new KeySpec("result", new ScalarForm(ScalarKind.Word) { Words = ["no-change", "for-a-while", "cured"] }, "What came of it."))
    {
        Others = new MapForm(ScalarKind.Id, new ScalarForm(ScalarKind.ObservedValue)),
    };

    private static readonly Shape Expectation = new(
        "'expect'",
        new KeySpec("top", Count, "The best placed confirmed cause must rank at least here; 3 when left out."),
        new KeySpec("confidence", Probability, "Least confidence of the best placed confirmed cause."),
        new KeySpec("hazards", Ids, "Hazards that must be shown."),
        new KeySpec("next-check", Id, "A check that must be among the first three."),
        new KeySpec("never-check", Ids, "Checks that must never be proposed."));

    private static readonly Form Observations = new ShapeForm(Observation).List;

    /// <summary>One recorded case.</summary>
    public static readonly Shape Case = new(
        "a case",
        new KeySpec("case", Id, "Id of the case.") { IsRequired = true, Example = "case: ld4-017" },
        new KeySpec("pack", Id, "Id of the pack.") { IsRequired = true, Example = "pack: corrie-ld4-tail-lift" },
        new KeySpec("recorded", new ScalarForm(ScalarKind.Date), "Day it was recorded.") { IsRequired = true, Example = "recorded: 2026-03-02" },
        new KeySpec("chassis", new ScalarForm(ScalarKind.Chassis), "Chassis code; the pack's first when left out."),
        new KeySpec("complaint", Id, "The complaint."),
        new KeySpec("said", Sentence, "The customer's own words."),
        new KeySpec("observations", Observations, "Observations in the order they became known.") { IsRequired = true, Example = "observations: [{ pump-sound: clicks-only }]" },
        new KeySpec("seen-on-opening", Observations, "What was seen when the machine was opened; on record, not used by the replay."),
        new KeySpec("confirmed", Ids, "Causes or preconditions behind it, or 'unlisted'.") { IsRequired = true, Example = "confirmed: [motor-brushes-worn]" },
        new KeySpec("damaged", new MapForm(ScalarKind.Id, new ScalarForm(ScalarKind.Grades)), "Consequences that were put right too."),
        new KeySpec("verdict", new ScalarForm(ScalarKind.Word) { Words = ["confirmed", "probable"] }, "A probable one is replayed and shown, not counted for acceptance."),
        new KeySpec("repair", Id, "The repair done."),
        new KeySpec("minutes", Number, "Minutes it took."),
        new KeySpec("expect", new ShapeForm(Expectation), "What the diagnosis must say."),
        new KeySpec("source", Sentence, "Where the case was published."));

    public static readonly ShapeForm CaseForm = new(Case);
}
