using static DiagRules.Packs.Keys.Forms;

namespace DiagRules.Packs.Keys;

/// <summary>Keys that several kinds of entry share.</summary>
internal static class CommonKeys
{
    public static readonly KeySpec Only = new("only", new ScalarForm(ScalarKind.Chassis).List, "Chassis this entry is for; all of them when it is left out.");

    public static readonly KeySpec Accepts = new(
        "accepts", new MapForm(ScalarKind.Code, Sentence), "Warnings that are accepted here, each with its reason.")
    { Example = "accepts: { DR5013: \"live by nature; area kept clear\" }" };

    public static readonly KeySpec Title = new("title", Sentence, "What people read.") { IsRequired = true, Example = "title: Pump supply fuse" };

    public static readonly KeySpec OptionalTitle = Title with { IsRequired = false };

    public static readonly KeySpec Question = new("question", Sentence, "What to ask or to measure.") { Example = "question: What do you hear from the power unit?" };

    public static readonly KeySpec Grades = new("grades", GradeNames, "Two to eight grades, the healthy one first; of two at once the later one is what is seen.")
    {
        IsRequired = true,
        Example = "grades: [whole, blown]",
    };

    public static readonly KeySpec Lasting = new("lasting", Flag, "Whether it can be judged though the fault does not show itself at that moment.");

    public static readonly KeySpec ShowsKey = new("shows", Shows, "What it lets appear: findings and effects with the probability of each grade; what is left over goes to the first grade.");

    public static readonly KeySpec Minutes = new("minutes", Number, "Minutes of a practised hand, putting back included.") { Example = "minutes: 4" };

    public static readonly KeySpec CostKey = new("cost", Cost, "What it costs beside the minutes; a bare number is minutes' worth.");

    public static readonly KeySpec SkillKey = new("skill", Skill, "The least skill that can do it; each can do what those before can.");

    public static readonly KeySpec Needs = new("needs", Ids, "Access states that must be open.");

    public static readonly KeySpec Tools = new("tools", Sentences, "Tools it takes.");

    public static readonly KeySpec HazardsKey = new("hazards", Ids, "What can hurt.");

    public static readonly KeySpec Steps = new("steps", Sentences, "How to do it, step by step.");

    public static readonly KeySpec SkipIf = new("skip-if", Condition, "Not offered where this is certainly true.");

    public static readonly KeySpec Background = new("background", Distribution, "How often each grade is seen though no listed cause is behind it.");

    public static readonly KeySpec Given = new("given", Ids, "Parents of a full table.");

    public static readonly KeySpec RepairByGrade = new("repair", new MapForm(ScalarKind.Grade, Id), "Damage to put right as well, by grade.");

    public static readonly KeySpec Reason = new("reason", Sentence, "Why.");
}
