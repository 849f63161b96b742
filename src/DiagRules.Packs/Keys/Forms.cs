namespace DiagRules.Packs.Keys;

/// <summary>The forms that many keys share.</summary>
internal static class Forms
{
    public static readonly ScalarForm Sentence = new(ScalarKind.Sentence);
    public static readonly ScalarForm Id = new(ScalarKind.Id);
    public static readonly ScalarForm Flag = new(ScalarKind.Flag) { Words = ["yes", "no"] };
    public static readonly ScalarForm Number = new(ScalarKind.Number);
    public static readonly ScalarForm Count = new(ScalarKind.Count);
    public static readonly ScalarForm Quantity = new(ScalarKind.Quantity);
    public static readonly ScalarForm Probability = new(ScalarKind.Probability);
    public static readonly ScalarForm Share = new(ScalarKind.Share);
    public static readonly ScalarForm Cost = new(ScalarKind.Cost);
    public static readonly ScalarForm Condition = new(ScalarKind.Condition);
    public static readonly ScalarForm Word = new(ScalarKind.Word);
    public static readonly ScalarForm Skill = new(ScalarKind.Word) { Words = ["owner", "owner-with-meter", "workshop", "specialist"] };
    public static readonly ScalarForm SignalWord = new(ScalarKind.Word) { Words = ["danger", "warning", "caution", "notice"] };
    public static readonly ListForm Ids = Id.List;
    public static readonly ListForm Sentences = Sentence.List;
    public static readonly ListForm GradeNames = new ScalarForm(ScalarKind.Grade).List;

    /// <summary>One distribution: grades to probabilities. Layers replace it as one value.</summary>
    public static readonly MapForm Distribution = new(ScalarKind.Grade, Probability);

    /// <summary>Children to distributions, or the parent's grades to those.</summary>
    public static readonly MapForm Shows = new(ScalarKind.Id, new MapForm(ScalarKind.Word, new EitherForm([Probability, Distribution])));

    public static EitherForm Either(params ReadOnlySpan<Form> forms) => new([.. forms]);
}
