using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;

namespace DiagRules.Cli.Asking;

/// <summary>
/// Puts one question and listens until there is an answer or a wish to go elsewhere. What may be typed at any question is carried out
/// here.
/// </summary>
internal sealed class Conversation(Terminal terminal, Page page, Recorder recorder)
{
    private bool _isWarnedOfLoss;

    /// <summary>Listens for the answer to a question.</summary>
    /// <param name="form">How the question is answered, or <see langword="null"/> when only commands make sense.</param>
    /// <param name="moment">Where the dialogue stands, or <see langword="null"/> before there is a session.</param>
    public Reply Ask(AnswerForm? form, Moment? moment)
    {
        while (true)
        {
            terminal.Out.Write("> ");
            var typed = terminal.In.ReadLine();
            if (terminal.EchoesInput || typed is null)
            {
                terminal.Out.WriteLine(typed);
            }

            if (typed is null)
            {
                return new Reply(ReplyKind.Leave);
            }

            if (Take(typed.Trim(), form, moment) is { } reply)
            {
                return reply;
            }
        }
    }

    private Reply? Take(string text, AnswerForm? form, Moment? moment)
    {
        var (word, more) = Split(text);
        _isWarnedOfLoss &= word is "quit" or "q" or "exit";
        if (form?.IsWordForWord(text) == true)
        {
            return Answer(form, text);
        }

        switch (word)
        {
            case "":
                return null;
            case "?" or "cannot-tell" or "cannot":
                return new Reply(ReplyKind.CannotTell);
            case "back" or "undo":
                return new Reply(ReplyKind.Back);
            case "other":
                return new Reply(ReplyKind.Other, more);
            case "quit" or "q" or "exit":
                return Leave(moment);
            case "help" or "h":
                Help.Write(page);
                return null;
            case "save":
                recorder.Save(more, moment?.Session);
                return null;
            case "why" or "standing" or "known":
                Show(word, more, moment);
                return null;
            default:
                return text.Contains('=', StringComparison.Ordinal) ? GiveFact(text, moment) : Answer(form, text);
        }
    }

    private Reply? Answer(AnswerForm? form, string text)
    {
        var fact = form is { IsObservation: true } ? Fact.Read(text) : new Fact(text, IsDoubtful: false, IsWhileWorking: false);
        var answer = form?.Read(fact.Value) ?? new TypedAnswer(null, $"'{text}' is no command here; 'help' lists them.");
        if (answer.Remark is not null)
        {
            page.Text(0, answer.Remark);
        }

        return answer.Value is null ? null : new Reply(ReplyKind.Answer, (fact with { Value = answer.Value }).ToString());
    }

    private Reply? GiveFact(string text, Moment? moment)
    {
        var (id, value) = (text.Split('=', 2)[0].Trim(), text.Split('=', 2)[1].Trim());
        if (moment is null)
        {
            page.Text(0, "Say first what the complaint is, or that there is none of these.");
            return null;
        }

        return recorder.TryObserve(moment.Session, id, value) ? new Reply(ReplyKind.Fact) : null;
    }

    private Reply? Leave(Moment? moment)
    {
        if (recorder.Path is not null || moment is not { Session.Record.Count: > 0 } || _isWarnedOfLoss)
        {
            return new Reply(ReplyKind.Leave);
        }

        _isWarnedOfLoss = true;
        page.Text(0, "This session is not saved: 'save FILE' keeps it, 'quit' once more drops it.");
        return null;
    }

    private void Show(string word, string more, Moment? moment)
    {
        if (moment is null)
        {
            page.Text(0, "Nothing is known yet.");
            return;
        }

        var pack = moment.Session.Engine.Pack;
        var diagnosis = moment.DiagnosisNow();
        switch (word)
        {
            case "known":
                KnownText.Write(page, pack, diagnosis);
                break;
            case "standing":
                StandingText.Write(page, pack, diagnosis, most: 20);
                break;
            default:
                WhyText.Write(page, moment with { Diagnosis = diagnosis }, more);
                break;
        }
    }

    private static (string Word, string More) Split(string text)
    {
        var parts = text.Split(' ', 2, StringSplitOptions.TrimEntries);
        return (parts[0].ToLowerInvariant(), parts.Length > 1 ? parts[1] : "");
    }
}
