using DiagRules.Cli.Rendering;
using DiagRules.Model;

namespace DiagRules.Cli.Asking;

/// <summary>The questions of one check, one after the other.</summary>
internal sealed class CheckQuestions(Page page, Conversation conversation, Recorder recorder, Pack pack)
{
    /// <summary>Puts whatever of the check is not known yet; all of it when everything is.</summary>
    public Reply Put(Moment moment, Check check)
    {
        var known = moment.Session.Record.Select(observation => observation.Id)
            .Concat(moment.Diagnosis.Findings.Select(finding => finding.Finding))
            .ToHashSet(StringComparer.Ordinal);
        var open = check.Gives.Where(id => !known.Contains(id)).ToList();
        var asked = open.Count > 0 ? open : [.. check.Gives];
        for (var i = 0; i < asked.Count;)
        {
            var place = asked.Count > 1 ? $" ({i + 1} of {asked.Count})" : "";
            var reply = Put(moment, asked[i], Question(asked[i]) + place);
            if (reply.Kind == ReplyKind.Back && i > 0)
            {
                recorder.TakeBack(moment.Session);
                i--;
            }
            else if (reply.Kind is ReplyKind.Answer or ReplyKind.CannotTell)
            {
                i++;
            }
            else
            {
                return reply;
            }
        }

        return new Reply(ReplyKind.Answer);
    }

    /// <summary>Puts the question of one finding, reading or cause.</summary>
    public Reply Put(Moment moment, string id) => Put(moment, id, Question(id));

    private string Question(string id) => pack.Find(id) switch
    {
        Reading reading => reading.Question ?? reading.Title,
        Finding finding => finding.Question ?? finding.Title,
        Cause cause => $"{cause.Title}: is it so?",
        _ => id,
    };

    private Reply Put(Moment moment, string id, string question)
    {
        AnswerForm form = pack.Find(id) switch
        {
            Reading reading => new ReadingForm(reading) { IsObservation = true },
            Graded graded => ChoiceForm.Of(graded),
            _ => throw new InvalidOperationException($"'{id}' is nothing that can be asked."),
        };
        page.Blank();
        page.Text(0, question, Ink.Strong);
        form.Write(page);
        while (true)
        {
            var reply = conversation.Ask(form, moment);
            var value = reply.Kind switch
            {
                ReplyKind.Answer => reply.Text,
                ReplyKind.CannotTell => "cannot-tell",
                _ => null,
            };
            if (value is null || recorder.TryObserve(moment.Session, id, value))
            {
                return reply;
            }
        }
    }
}
