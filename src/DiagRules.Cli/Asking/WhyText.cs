using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;
using DiagRules.Results;

namespace DiagRules.Cli.Asking;

/// <summary>Why a question is put, and why the leading cause leads.</summary>
internal static class WhyText
{
    /// <summary>Writes both, or why one cause stands where it stands.</summary>
    /// <param name="page">Where to write.</param>
    /// <param name="moment">Where the dialogue stands.</param>
    /// <param name="cause">Id of that cause, or nothing.</param>
    public static void Write(Page page, Moment moment, string cause)
    {
        var causes = moment.Diagnosis.Hypotheses;
        if (cause.Length == 0)
        {
            WriteStep(page, moment);
            WriteCause(page, moment, causes is [{ Confidence: > 0 } first, ..] ? first : null, "leads");
        }
        else if (causes.FirstOrDefault(one => one.Cause == cause) is { } named)
        {
            WriteCause(page, moment, named, "stands where it stands");
        }
        else
        {
            page.Text(0, $"There is no cause '{cause}'.{Spelling.Hint(cause, causes.Select(one => one.Cause))}");
        }
    }

    private static void WriteStep(Page page, Moment moment)
    {
        var pack = moment.Session.Engine.Pack;
        if (moment.Step is { } step)
        {
            page.Text(0, "Why this", Ink.Strong);
            page.Text(2, step.Why);
            new StepText(page, pack, new HazardSheet(pack)).WriteAnswers(step);
        }
    }

    private static void WriteCause(Page page, Moment moment, Hypothesis? cause, string stands)
    {
        if (cause is not null)
        {
            page.Text(0, $"Why \"{cause.Title}\" {stands}", Ink.Strong);
            ExplanationText.Write(page, moment.Session.Explain(cause.Cause), most: 6);
        }
    }
}
