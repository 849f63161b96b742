using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Cli.Rendering;

/// <summary>A whole diagnosis as one page that can be read aloud: dangers first, then what is known, the causes, and what to do.</summary>
internal sealed class DiagnosisText(Page page, Pack pack)
{
    private readonly HazardSheet _sheet = new(pack);
    private readonly Titles _titles = new(pack);

    /// <summary>Writes the page.</summary>
    /// <param name="diagnosis">What is believed and proposed.</param>
    /// <param name="leading">Why the leading cause leads, or <see langword="null"/> when there is none.</param>
    public void Write(Diagnosis diagnosis, CauseExplanation? leading)
    {
        PackLine.Write(page, pack, diagnosis.Chassis);
        WriteDangers(diagnosis);
        page.Heading("What is known");
        KnownText.Write(page, pack, diagnosis);
        WriteContradictions(diagnosis);
        page.Heading("What it can be");
        StandingText.Write(page, pack, diagnosis);
        if (leading is { Weights.IsEmpty: false })
        {
            page.Heading($"Why \"{leading.Title}\" stands first{(diagnosis.Unlisted > leading.Confidence ? " of those listed" : "")}");
            ExplanationText.Write(page, leading, most: 5);
        }

        WriteAdvice(diagnosis);
        WriteSteps(diagnosis);
        WriteNotes(diagnosis);
        page.Blank();
        SafetyText.Write(page);
    }

    // What the machine threatens by itself, and the dangers of what is proposed first, stand above everything else.
    private void WriteDangers(Diagnosis diagnosis)
    {
        var ofTheMachine = _sheet.OfTheMachine(diagnosis);
        var ofTheStep = diagnosis.Next.IsEmpty ? [] : HazardSheet.OfStep(diagnosis, diagnosis.Next[0]);
        var dangers = diagnosis.Hazards
            .Where(hazard => ofTheMachine.Contains(hazard) || (hazard.SignalWord == SignalWord.Danger && ofTheStep.Contains(hazard)))
            .ToList();
        if (dangers.Count > 0)
        {
            page.Blank();
            _sheet.Write(page, 0, dangers);
        }
    }

    private void WriteContradictions(Diagnosis diagnosis)
    {
        if (!diagnosis.Contradictions.IsEmpty)
        {
            page.Heading("What does not agree");
        }

        foreach (var contradiction in diagnosis.Contradictions)
        {
            page.Item(2, "-", 2, KnownText.Disagreement(contradiction));
        }
    }

    private void WriteAdvice(Diagnosis diagnosis)
    {
        if (!diagnosis.Advice.IsEmpty)
        {
            page.Heading("Advice");
            foreach (var advice in diagnosis.Advice)
            {
                page.Item(2, "-", 2, advice.Text);
                page.Text(4, advice.Reason ?? "", Ink.Faint);
            }
        }

        if (!diagnosis.Deferred.IsEmpty)
        {
            page.Heading("Not yet");
            foreach (var deferral in diagnosis.Deferred)
            {
                page.Item(2, "-", 2, $"{_titles.Of(deferral.Id)}: {deferral.Reason ?? "held back by the rule " + deferral.By}");
            }
        }
    }

    private void WriteSteps(Diagnosis diagnosis)
    {
        if (diagnosis.Next.IsEmpty)
        {
            page.Heading("What to do next");
            page.Text(2, "Nothing is left that can be done with this skill and these tools.");
            return;
        }

        var best = diagnosis.Next[0];
        var text = new StepText(page, pack, _sheet);
        page.Heading(best.Kind == StepKind.Check ? "What to find out next" : "What to do next");
        text.Write(diagnosis, best);
        text.WriteAnswers(best);
        if (diagnosis.Next.Length > 1)
        {
            page.Heading("Or else");
            foreach (var (step, place) in diagnosis.Next.Skip(1).Take(2).Select((step, place) => (step, place + 2)))
            {
                page.Item(2, $"{place}.", 3, $"{StepText.Title(step)} ({StepText.Price(step)}). {step.Why}");
            }
        }
    }

    private void WriteNotes(Diagnosis diagnosis)
    {
        if (!diagnosis.Notes.IsEmpty)
        {
            page.Heading("Notes");
        }

        foreach (var note in diagnosis.Notes)
        {
            page.Item(2, "-", 2, note);
        }
    }
}
