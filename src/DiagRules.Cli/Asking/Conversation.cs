using DiagRules.Cli.Rendering;
using DiagRules.Model.Cases;

namespace DiagRules.Cli.Asking;

/// <summary>
/// Puts one question and listens until there is an answer or a wish to go elsewhere. What may be typed at any question is carried out
/// here.
/// </summary>
internal sealed class Conversation(Terminal terminal, Page page, SessionFile file)
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

    /// <summary>Puts a fact on record, or says why it does not fit.</summary>
    /// <returns>Whether it counts.</returns>
    public bool TryObserve(DiagnosisSession session, string id, string value)
    {
        var result = session.Observe(id, value, session.Options.Skill);
        if (result.Problem is not null)
        {
            page.Text(0, result.Problem.Message);
        }

        if (result is { IsAccepted: true, IsUsed: false, Problem: not null })
        {
            // A slip that is noticed at once is typed again; it need not stay on record.
            session.Undo();
            return false;
        }

        return result.IsAccepted && Keep(session);
    }

    /// <summary>Puts on record what came of a repair.</summary>
    public void Tried(DiagnosisSession session, string repair, TriedResult result)
    {
        session.Observe(new Observation(repair, new Tried(result)) { By = session.Options.Skill });
        Keep(session);
    }

    /// <summary>Takes the last answer back.</summary>
    /// <returns>Whether there was one.</returns>
    public bool TakeBack(DiagnosisSession session) => session.Undo() && Keep(session);

    private bool Keep(DiagnosisSession session)
    {
        file.Write(session);
        return true;
    }

    private Reply? Take(string text, AnswerForm? form, Moment? moment)
    {
        var (word, more) = Split(text);
        var isLoss = word is "quit" or "q" or "exit";
        _isWarnedOfLoss &= isLoss;
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
                Save(more, moment);
                return null;
            case "why" or "standing" or "known":
                Show(word, moment);
                return null;
            default:
                return text.Contains('=', StringComparison.Ordinal) ? Fact(text, moment) : Answer(form, text);
        }
    }

    private Reply? Answer(AnswerForm? form, string text)
    {
        var answer = form?.Read(text) ?? new TypedAnswer(null, $"'{text}' is no command here; 'help' lists them.");
        if (answer.Remark is not null)
        {
            page.Text(0, answer.Remark);
        }

        return answer.Value is null ? null : new Reply(ReplyKind.Answer, answer.Value);
    }

    private Reply? Fact(string text, Moment? moment)
    {
        var (id, value) = (text.Split('=', 2)[0].Trim(), text.Split('=', 2)[1].Trim());
        if (moment is null)
        {
            page.Text(0, "Say first what the complaint is, or that there is none of these.");
            return null;
        }

        return TryObserve(moment.Session, id, value) ? new Reply(ReplyKind.Fact) : null;
    }

    private Reply? Leave(Moment? moment)
    {
        if (file.Path is not null || moment is not { Session.Record.Count: > 0 } || _isWarnedOfLoss)
        {
            return new Reply(ReplyKind.Leave);
        }

        _isWarnedOfLoss = true;
        page.Text(0, "This session is not saved: 'save FILE' keeps it, 'quit' once more drops it.");
        return null;
    }

    private void Save(string path, Moment? moment)
    {
        try
        {
            if (moment is null || (path.Length == 0 && file.Path is null))
            {
                page.Text(0, moment is null ? "There is nothing to save yet." : "Name a file: 'save lift.json'.");
                return;
            }

            if (path.Length > 0)
            {
                file.Use(path);
            }

            file.Write(moment.Session);
            page.Text(0, $"Saved in '{file.Path}', and from now on after every answer.");
        }
        catch (WrongUseException exception)
        {
            page.Text(0, exception.Message);
        }
    }

    private void Show(string word, Moment? moment)
    {
        if (moment is null)
        {
            page.Text(0, "Nothing is known yet.");
            return;
        }

        var pack = moment.Session.Engine.Pack;
        switch (word)
        {
            case "known":
                KnownText.Write(page, pack, moment.Diagnosis);
                break;
            case "standing":
                StandingText.Write(page, pack, moment.Diagnosis, most: 20);
                break;
            default:
                WhyText.Write(page, moment);
                break;
        }
    }

    private static (string Word, string More) Split(string text)
    {
        var parts = text.Split(' ', 2, StringSplitOptions.TrimEntries);
        return (parts[0].ToLowerInvariant(), parts.Length > 1 ? parts[1] : "");
    }
}
