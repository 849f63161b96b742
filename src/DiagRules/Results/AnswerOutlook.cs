namespace DiagRules.Results;

/// <summary>One answer a check can give, how likely it is, and who would lead then. Immutable.</summary>
/// <param name="Answer">Finding and grade, e.g. <c>main-fuse is blown</c>; several findings are joined by <c>and</c>.</param>
/// <param name="Probability">How likely this answer is now, 0..1.</param>
/// <param name="Leads">The cause that would lead, by id; <c>unlisted</c> for something the pack does not list.</param>
/// <param name="Confidence">Its confidence then, 0..1.</param>
public sealed record AnswerOutlook(string Answer, double Probability, string Leads, double Confidence);
