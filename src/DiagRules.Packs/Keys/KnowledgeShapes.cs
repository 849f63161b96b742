using System.Collections.Immutable;
using DiagRules.Model.Problems;
using static DiagRules.Packs.Keys.CommonKeys;
using static DiagRules.Packs.Keys.Forms;

namespace DiagRules.Packs.Keys;

/// <summary>The keys of what is known about the machine: readings, findings, effects, causes, preconditions.</summary>
internal static class KnowledgeShapes
{
    private static readonly Shape TableRow = new(
        "a row of 'table'",
        new KeySpec("if", new MapForm(ScalarKind.Id, new ScalarForm(ScalarKind.Grades)), "Grades of the parents; a parent left out stands for all its grades."),
        new KeySpec("then", Distribution, "The grades of the child; what is left over goes to the first."),
        new KeySpec("otherwise", Distribution, "The grades of the child in all combinations that no row names."));

    private static readonly KeySpec Table = new("table", new ShapeForm(TableRow).List, "A full table instead of contributions.");

    public static readonly Shape Bands = new(
        "'bands'",
        new KeySpec("of", Id, "The reading.") { IsRequired = true, Example = "of: fuse-drop" },
        new KeySpec("rising", new ScalarForm(ScalarKind.Limit).List, "Grade, limit, grade ... in rising value.") { IsRequired = true, Example = "rising: [small, 0.3 V, large]" },
        new KeySpec("if", Condition, "When the bands count at all."));

    public static readonly Shape Reading = new(
        "a reading",
        Question,
        OptionalTitle,
        new KeySpec("unit", new ScalarForm(ScalarKind.Unit), "Its unit; 'number' for a bare one.") { Example = "unit: V" },
        new KeySpec("from", new ScalarForm(ScalarKind.Sum), "How it derives from other readings."),
        new KeySpec("plausible", new ScalarForm(ScalarKind.Range), "A value outside is taken for a slip of the pen."),
        new KeySpec("accuracy", new ScalarForm(ScalarKind.Accuracy), "The limit of error that the meter's maker states."),
        new KeySpec("resolution", Quantity, "What one digit of the meter is worth, where the accuracy counts digits."),
        Lasting,
        Only,
        Accepts);

    public static readonly Shape Finding = new(
        "a finding",
        OptionalTitle,
        Question,
        Grades,
        Lasting,
        Minutes,
        SkillKey,
        Needs,
        HazardsKey,
        SkipIf,
        new KeySpec("bands", new ShapeForm(Bands), "Grades by the value of one reading."),
        new KeySpec("read", new MapForm(ScalarKind.Grade, Condition), "Grades by conditions."),
        Background,
        ShowsKey,
        Given,
        Table,
        RepairByGrade,
        Only,
        Accepts);

    public static readonly Shape Effect = new("an effect", OptionalTitle, Grades, Background, ShowsKey, Given, Table, RepairByGrade, Only, Accepts)
    {
        Misplaced = new[] { "question", "read", "bands", "lasting" }.ToImmutableDictionary(
            key => key, _ => (ProblemCatalogue.EffectObserved, "nobody observes it, so make it a finding, or take the key out"), StringComparer.Ordinal),
    };

    public static readonly Shape Cause = new("a cause", [.. CauseKeys()]);

    public static readonly Shape Precondition = new(
        "a precondition",
        [.. CauseKeys(
            new KeySpec("must", Condition, "What the machine demands; certainly true rules this out, certainly false confirms it.") { IsRequired = true, Example = "must: cab-switch is on" },
            new KeySpec("restore", Sentence, "What puts it right."),
            new KeySpec("if-not", Sentence, "What the machine does otherwise."))]);

    private static KeySpec[] CauseKeys(params KeySpec[] more) =>
    [
        Title,
        new("system", Word, "One of the words of 'systems'."),
        new("share", Share, "Relative frequency among complaints.") { Example = "share: 4" },
        new("probability", Probability, "Absolute probability, in a pack without shares."),
        new("intermittent", Probability, "Chance that the machine works when it is presented; 'hardly-ever' when left out."),
        .. more,
        ShowsKey,
        new("repair", Either(Id, new MapForm(ScalarKind.Id, Probability)), "What cures it, and how surely where that is not certain."),
        HazardsKey with { Meaning = "Shown as soon as this is a serious possibility." },
        Reason,
        Only,
        Accepts,
    ];
}
