namespace DiagRules.Packs.Keys;

/// <summary>What a piece of text is taken for.</summary>
internal enum ScalarKind
{
    Sentence,
    Id,
    Grade,
    Grades,
    Flag,
    Number,
    Count,
    Quantity,
    Range,
    Accuracy,
    Share,
    Probability,
    Cost,
    Rate,
    Word,
    Unit,
    Condition,
    Sum,
    Limit,
    Version,
    VersionRange,
    Chassis,
    Language,
    Date,
    Time,
    Trust,
    ObservedValue,
    Code,
}

/// <summary>How messages put them.</summary>
internal static class ScalarKindWords
{
    public static string Describe(this ScalarKind kind) => kind switch
    {
        ScalarKind.Sentence => "a sentence",
        ScalarKind.Id => "an id",
        ScalarKind.Grade => "a grade",
        ScalarKind.Grades => "grades (as in 'slow or worse')",
        ScalarKind.Flag => "'yes' or 'no'",
        ScalarKind.Number => "a number",
        ScalarKind.Count => "a whole number",
        ScalarKind.Quantity => "a quantity (as in '50 A')",
        ScalarKind.Range => "a range (as in '0 V .. 32 V')",
        ScalarKind.Accuracy => "an accuracy (as in '0.5 % + 0.02 V')",
        ScalarKind.Share => "a share (a bare number)",
        ScalarKind.Probability => "a probability",
        ScalarKind.Cost => "a cost (as in '5 EUR', or minutes' worth)",
        ScalarKind.Rate => "a labour rate (as in '84 EUR/h')",
        ScalarKind.Word => "a word",
        ScalarKind.Unit => "a unit",
        ScalarKind.Condition => "a condition",
        ScalarKind.Sum => "a sum (as in 'fuse-feed - fuse-load')",
        ScalarKind.Limit => "a grade or a limit",
        ScalarKind.Version => "a version (as in '1.2.0')",
        ScalarKind.VersionRange => "a name with its versions (as in 'electro-hydraulic-unit@1.x')",
        ScalarKind.Chassis => "a chassis code",
        ScalarKind.Language => "a language tag (as in 'en')",
        ScalarKind.Date => "a date (as in '2026-03-02')",
        ScalarKind.Time => "a date or time (as in '2026-03-02T14:30')",
        ScalarKind.Trust => "a trust (0..1, or 'doubtful')",
        ScalarKind.ObservedValue => "a value",
        _ => "a problem code (as in 'DR5013')",
    };

    public static string Plural(this ScalarKind kind) => kind switch
    {
        ScalarKind.Sentence => "sentences",
        ScalarKind.Id => "ids",
        ScalarKind.Grade or ScalarKind.Grades => "grades",
        ScalarKind.Probability => "probabilities",
        ScalarKind.Quantity => "quantities",
        ScalarKind.Share => "shares",
        ScalarKind.Word => "words",
        ScalarKind.Chassis => "chassis codes",
        ScalarKind.VersionRange => "names with their versions",
        ScalarKind.Limit => "grades and limits",
        ScalarKind.Condition => "conditions",
        ScalarKind.Code => "problem codes",
        _ => "values",
    };

    /// <summary>Whether <c>true</c>, <c>false</c> and <c>null</c> are refused here: wherever a word is expected, that is.</summary>
    public static bool IsWord(this ScalarKind kind) =>
        kind is ScalarKind.Id or ScalarKind.Grade or ScalarKind.Grades or ScalarKind.Flag or ScalarKind.Word or ScalarKind.Limit
            or ScalarKind.Chassis or ScalarKind.ObservedValue or ScalarKind.Unit or ScalarKind.Language;
}
