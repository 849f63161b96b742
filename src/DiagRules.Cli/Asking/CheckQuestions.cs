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
            var reply = PutOne(moment, asked[i], asked.Count > 1 ? $" ({i + 1} of {asked.Count})" : "");
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

    /// <summary>Puts one question until the answer is on record.</summary>
    public Reply PutOne(Moment moment, string id, string place = "")
    {
        var entry = pack.Find(id);
        AnswerForm form = entry switch
        {
            Reading reading => new ReadingForm(reading),
            Graded graded => ChoiceForm.Of(graded),
            _ => throw new InvalidOperationException($"'{id}' is nothing that can be asked."),
        };
        page.Blank();
        page.Text(0, entry is Cause ? $"{entry.Title}: is it so?{place}" : entry.Title + place, Ink.Strong);
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
