using DiagRules.Cli.Rendering;
using DiagRules.Results;

namespace DiagRules.Cli.Asking;

/// <summary>Why a question is put, and why the leading cause leads.</summary>
internal static class WhyText
{
    /// <summary>Writes both.</summary>
    public static void Write(Page page, Moment moment)
    {
        var pack = moment.Session.Engine.Pack;
        if (moment.Step is { } step)
        {
            page.Text(0, "Why this", Ink.Strong);
            page.Text(2, step.Why);
            new StepText(page, pack, new HazardSheet(pack)).WriteAnswers(step);
        }

        if (moment.Diagnosis.Hypotheses is [{ Confidence: > 0 } first, ..])
        {
            page.Text(0, $"Why \"{first.Title}\" leads", Ink.Strong);
            ExplanationText.Write(page, moment.Session.Explain(first.Cause), most: 6);
        }
    }
}
