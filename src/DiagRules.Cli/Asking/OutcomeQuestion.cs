using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Cli.Asking;

/// <summary>What came of a repair, or of handing the job over.</summary>
internal sealed class OutcomeQuestion(Page page, Conversation conversation, Recorder recorder, Pack pack)
{
    private const string NotDone = "not-done";
    private const string Cured = "cured";
    private const string HandOver = "hand-over";

    private static readonly ChoiceForm Repaired = new(
    [
        new(Cured, "cured: the complaint is gone"),
        new("no-change", "no change"),
        new("for-a-while", "it was well for a while"),
        new(NotDone, "not done; propose something else"),
    ])
    { IsObservation = true };

    private static readonly ChoiceForm HandedOver = new(
    [
        new(HandOver, "hand it over; this ends here"),
        new(NotDone, "not yet; propose something else"),
    ]);

    /// <summary>Puts the question.</summary>
    public Reply Put(Moment moment, NextStep step)
    {
        var form = step.Kind == StepKind.Repair ? Repaired : HandedOver;
        page.Blank();
        page.Text(0, step.Kind == StepKind.Repair ? "What came of it?" : "What now?", Ink.Strong);
        form.Write(page);
        var reply = conversation.Ask(form, moment);
        return reply.Kind switch
        {
            ReplyKind.Answer => Take(reply.Text, moment, step),
            ReplyKind.CannotTell => new Reply(ReplyKind.PassOver),
            _ => reply,
        };
    }

    private Reply Take(string outcome, Moment moment, NextStep step)
    {
        var word = Fact.Read(outcome).Value;
        if (word == HandOver)
        {
            return new Reply(ReplyKind.Leave);
        }

        if (word == NotDone || !recorder.TryObserve(moment.Session, step.Id, outcome) || word != Cured)
        {
            return new Reply(ReplyKind.PassOver);
        }

        WriteCure(moment, step);
        return new Reply(ReplyKind.Leave);
    }

    private void WriteCure(Moment moment, NextStep step)
    {
        var cured = moment.Diagnosis.Hypotheses
            .Where(hypothesis => hypothesis.Confidence > 0 && hypothesis.Repairs.Contains(step.Id, StringComparer.Ordinal))
            .Select(hypothesis => $" So it was most likely this: {hypothesis.Title}.")
            .FirstOrDefault("");
        page.Blank();
        page.Text(0, $"Cured by: {StepText.Title(step)}.{cured}", Ink.Strong);
        if (pack.FindRepair(step.Id) is { VerifyBy.IsEmpty: false } repair)
        {
            page.Text(0, "Before the vehicle leaves:");
            new StepText(page, pack, new HazardSheet(pack)).WriteProof(repair);
        }
    }
}
