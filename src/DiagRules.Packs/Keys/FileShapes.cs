using System.Collections.Immutable;
using DiagRules.Model.Problems;
using static DiagRules.Packs.Keys.CommonKeys;
using static DiagRules.Packs.Keys.Forms;

namespace DiagRules.Packs.Keys;

/// <summary>The table of keys from the top: <c>pack.yaml</c> and the sections that every file may hold.</summary>
internal static class FileShapes
{
    /// <summary>The sections in order, each with the shape of its entries.</summary>
    public static readonly ImmutableArray<(string Section, Shape Entry)> Sections =
    [
        ("readings", KnowledgeShapes.Reading),
        ("findings", KnowledgeShapes.Finding),
        ("effects", KnowledgeShapes.Effect),
        ("causes", KnowledgeShapes.Cause),
        ("preconditions", KnowledgeShapes.Precondition),
        ("parameters", WorkShapes.Parameter),
        ("complaints", WorkShapes.Complaint),
        ("rules", WorkShapes.Rule),
        ("checks", WorkShapes.Check),
        ("access", WorkShapes.Access),
        ("hazards", WorkShapes.Hazard),
        ("repairs", WorkShapes.Repair),
    ];

    private static readonly Shape Acceptance = new(
        "'acceptance'",
        new KeySpec("top-1", Probability, "Share of cases in which a confirmed cause comes first."),
        new KeySpec("top-3", Probability, "Share of cases in which a confirmed cause is among the first three."),
        new KeySpec("brier", Number, "Squared error summed over causes and unlisted (0..2), mean over cases: at most this."));

    private static readonly ImmutableArray<KeySpec> HeadKeys =
    [
        new("format", Count, "Version of the format.") { IsRequired = true, Example = "format: 1" },
        new("pack", Id, "Id of the pack.") { IsRequired = true, Example = "pack: corrie-ld4-tail-lift" },
        new("version", new ScalarForm(ScalarKind.Version), "Semantic version.") { IsRequired = true, Example = "version: 1.0.0" },
        Title with { Meaning = "What people read.", Example = "title: Corrie LD4 tail lift" },
        new("chassis", new ScalarForm(ScalarKind.Chassis).List, "Codes a host asks for."),
        new("extends", new ScalarForm(ScalarKind.VersionRange).List, "Packs it builds on, nearest last."),
        new("language", new ScalarForm(ScalarKind.Language), "Language of the texts; 'en' when left out."),
        new("calculations", new ScalarForm(ScalarKind.VersionRange).List, "Calculation libraries its conditions call."),
        new("labour", new ScalarForm(ScalarKind.Rate), "Turns money into minutes.") { Example = "labour: 84 EUR/h" },
        new("specialist-cost", Cost, "What it costs to give the whole job to a specialist; a day's work (480) when left out."),
        new("unlisted", Share, "The share of what no listed cause explains; 5 % of all when left out."),
        new("coexistence", Probability, "How likely a further cause is beside the primary one, against on its own; 0.05 when left out."),
        new("trust", new MapForm(ScalarKind.Word, Probability), "How far an observer is believed."),
        new("acceptance", new ShapeForm(Acceptance), "What a replay of the cases must reach."),
        new("sets", new MapForm(ScalarKind.Word, new MapForm(ScalarKind.Id, Sentence)), "Sets of members for entries with '$set' in their id."),
        new("systems", new MapForm(ScalarKind.Id, Sentence), "What 'system' may name."),
        new("words", new MapForm(ScalarKind.Id, Probability), "Probability words of this pack's own."),
        Accepts with { Meaning = "Warnings about the pack as a whole that are accepted, each with its reason." },
    ];

    private static readonly ImmutableArray<KeySpec> SectionKeys =
        [.. Sections.Select(section => new KeySpec(section.Section, new MapForm(ScalarKind.Id, new ShapeForm(section.Entry)), $"Entries of the section '{section.Section}'."))];

    /// <summary><c>pack.yaml</c>.</summary>
    public static readonly Shape PackFile = new("pack.yaml", [.. HeadKeys, .. SectionKeys]);

    /// <summary>Every other file of a pack.</summary>
    public static readonly Shape SectionFile = new("a section file", SectionKeys)
    {
        Misplaced = HeadKeys.ToImmutableDictionary(
            key => key.Name, _ => (ProblemCatalogue.UnknownKey, "it says what the whole pack is, so write it in pack.yaml"), StringComparer.Ordinal),
    };

    public static Shape EntryOf(string section) => Sections.First(known => known.Section == section).Entry;
}
