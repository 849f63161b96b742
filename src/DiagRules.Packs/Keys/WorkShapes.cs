using static DiagRules.Packs.Keys.CommonKeys;
using static DiagRules.Packs.Keys.Forms;

namespace DiagRules.Packs.Keys;

/// <summary>The keys of parameters, complaints, rules, and of work on the machine.</summary>
internal static class WorkShapes
{
    public static readonly Shape Parameter = new(
        "a parameter",
        OptionalTitle,
        new KeySpec("value", Quantity, "The value where the chassis has none of its own.") { IsRequired = true, Example = "value: 50 A" },
        new KeySpec("for", new MapForm(ScalarKind.Chassis, Quantity), "Values of particular chassis."),
        new KeySpec("note", Sentence, "Where it comes from, or when it holds."),
        Only,
        Accepts);

    public static readonly Shape Complaint = new(
        "a complaint",
        Title,
        new KeySpec("means", new MapForm(ScalarKind.Id, new ScalarForm(ScalarKind.Grades)), "What it tells, as the owner's observations."),
        new KeySpec("shares", new MapForm(ScalarKind.Id, Share), "Shares that replace those of the causes; 'unlisted' may be among them."),
        Only,
        Accepts);

    public static readonly Shape Rule = new(
        "a rule",
        new KeySpec("when", Condition, "Must be certainly true.") { Example = "when: pump-fuse is blown" },
        new KeySpec("settles", new MapForm(ScalarKind.Id, new ScalarForm(ScalarKind.Grade)), "Findings it settles."),
        new KeySpec("rule-out", Ids, "Causes it rules out."),
        new KeySpec("advise", Sentence, "Advice to show."),
        HazardsKey with { Meaning = "Hazards to show." },
        new KeySpec("defer", Ids, "Checks and repairs not to be done yet."),
        Reason with { Meaning = "Why, for all consequences." },
        Only,
        Accepts);

    public static readonly Shape Check = new(
        "a check",
        Title,
        new KeySpec("gives", Ids, "Readings, findings and causes it gives.") { IsRequired = true, Example = "gives: [pump-fuse]" },
        Minutes,
        CostKey,
        Needs,
        SkillKey,
        Tools,
        HazardsKey,
        SkipIf,
        new KeySpec("alters", Ids, "Findings and readings that may be otherwise afterwards."),
        Steps,
        Only,
        Accepts);

    public static readonly Shape Access = new(
        "an access state",
        Title,
        Minutes,
        CostKey,
        SkillKey,
        Needs,
        Tools,
        HazardsKey,
        Steps,
        new KeySpec("excludes", Ids, "Access states that opening this one closes."),
        Only,
        Accepts);

    public static readonly Shape Hazard = new(
        "a hazard",
        new KeySpec("signal-word", SignalWord, "How bad (ANSI Z535.6, ISO 3864-2); 'notice' is damage to property.") { IsRequired = true, Example = "signal-word: warning" },
        new KeySpec("symbol", Word, "Number of the sign in ISO 7010."),
        new KeySpec("says", Sentence, "What it does.") { IsRequired = true, Example = "says: The feed is not fused; a spanner across it welds itself fast." },
        new KeySpec("avoid", Sentence, "How to keep out of its way."),
        new KeySpec("clears", Sentence, "What makes it go away."),
        Only,
        Accepts);

    public static readonly Shape Fastener = new(
        "a fastener",
        new KeySpec("at", Sentence, "Where, and what it is.") { IsRequired = true, Example = "at: fuse nuts M10" },
        new KeySpec("across-flats", Quantity, "Spanner size."),
        new KeySpec("torque", Quantity, "Tightening torque."));

    public static readonly Shape Verification = new(
        "an item of 'verify-by'",
        new KeySpec("check", Id, "The check.") { IsRequired = true, Example = "check: full-cycle" },
        new KeySpec("times", Count, "How often, where the fault came and went."),
        new KeySpec("findings", Ids, "The findings that must come out at their first grade; all that the check decides when left out."));

    public static readonly Shape Repair = new(
        "a repair",
        Title,
        Minutes,
        CostKey,
        SkillKey,
        new KeySpec("after", Ids, "Checks that must be done before this repair is offered."),
        new KeySpec("parts", Sentences, "Parts."),
        Needs,
        new KeySpec("fasteners", new ShapeForm(Fastener).List, "Fasteners with spanner size and torque."),
        Tools,
        HazardsKey,
        Steps,
        new KeySpec("verify-by", Either(Id, new ShapeForm(Verification)).List, "Checks that prove the repair."),
        Only,
        Accepts);

}
