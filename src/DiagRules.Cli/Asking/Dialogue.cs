using DiagRules.Cli.Rendering;
using DiagRules.Results;

namespace DiagRules.Cli.Asking;

/// <summary>
/// A session question by question: shows where it stands, puts the best next question, takes the answer, and goes on until a repair has
/// cured the complaint or the person stops. What is best is the session's to say; nothing is decided here.
/// </summary>
internal sealed class Dialogue
{
    private readonly DiagnosisEngine _engine;
    private readonly SessionOptions _options;
    private readonly Page _page;
    private readonly Recorder _recorder;
    private readonly Conversation _conversation;
    private readonly HazardSheet _sheet;
    private readonly Situation _situation;
    private readonly ComplaintQuestion? _complaint;

    // Steps that somebody passed over; they are proposed again only when asked for.
    private readonly HashSet<string> _passedOver = new(StringComparer.Ordinal);

    private DiagnosisSession? _session;

    /// <summary>Prepares a dialogue.</summary>
    /// <param name="terminal">Where it is held.</param>
    /// <param name="engine">The pack's engine.</param>
    /// <param name="options">How a new session begins; without a complaint it is asked for.</param>
    /// <param name="file">Where it is kept.</param>
    /// <param name="resumed">A session to go on with, or <see langword="null"/> to begin one.</param>
    public Dialogue(Terminal terminal, DiagnosisEngine engine, SessionOptions options, SessionFile file, DiagnosisSession? resumed)
    {
        _engine = engine;
        _options = options;
        _page = new Page(terminal);
        _recorder = new Recorder(_page, file);
        _conversation = new Conversation(terminal, _page, _recorder);
        _sheet = new HazardSheet(engine.Pack);
        _situation = new Situation(_page, engine.Pack, _sheet);
        _session = resumed;
        _complaint = options.Complaint is null && resumed is null ? new ComplaintQuestion(_page, _conversation, engine) : null;
    }

    /// <summary>Holds the dialogue.</summary>
    public void Run()
    {
        PackLine.Write(_page, _engine.Pack, _engine.Chassis);
        _page.Text(0, "Answer with a number, a word or its beginning. '?' means you cannot tell, 'help' lists what else there is.", Ink.Faint);
        SafetyText.Write(_page);
        if (_session is not null)
        {
            _recorder.Keep(_session);
            _page.Heading("What is known so far");
            KnownText.Write(_page, _engine.Pack, _session.Diagnose());
        }

        while (Begin() && Turn(_session!))
        {
        }

        _page.Text(0, _recorder.Path is null ? "Ended, not saved." : $"Ended, saved in '{_recorder.Path}'.");
    }

    private bool Begin()
    {
        if (_session is not null)
        {
            return true;
        }

        if (_complaint is not null && !_complaint.TryAsk(_options))
        {
            return false;
        }

        _session = _engine.Start(_options);
        _recorder.Keep(_session);
        return true;
    }

    private bool Turn(DiagnosisSession session)
    {
        if (Diagnose(session) is not { } diagnosis)
        {
            return true;
        }

        var step = diagnosis.Next.FirstOrDefault(step => !_passedOver.Contains(step.Id));
        _situation.Write(diagnosis, step);
        var moment = new Moment(session, diagnosis, step);
        var reply = Put(moment);
        if (reply.Kind == ReplyKind.Back)
        {
            TakeBack(session);
        }

        // From what was chosen instead, 'back' leads back to what was proposed; nothing was answered there yet.
        while (reply.Kind == ReplyKind.Other)
        {
            reply = PutOther(moment with { Step = null }, reply.Text);
        }

        return reply.Kind != ReplyKind.Leave;
    }

    // An answer that the session cannot weigh is taken back rather than the session lost.
    private Diagnosis? Diagnose(DiagnosisSession session)
    {
        try
        {
            return session.Diagnose();
        }
        catch (EngineException exception) when (session.Record.Count > 0)
        {
            _page.Text(0, exception.Message);
            _page.Text(0, "The last answer is taken back.");
            _recorder.TakeBack(session);
            return null;
        }
    }

    private Reply Put(Moment moment)
    {
        if (moment.Step is not { } step)
        {
            _page.Text(0, "Nothing is left to propose. 'other' lists what was passed over, id=value adds a fact, 'quit' ends.");
            return _conversation.Ask(null, moment);
        }

        _page.Blank();
        var pack = _engine.Pack;
        new StepText(_page, pack, _sheet).Write(moment.Diagnosis, step, isAsked: true);
        var reply = step.Kind == StepKind.Check
            ? new CheckQuestions(_page, _conversation, _recorder, pack).Put(moment, pack.FindCheck(step.Id)!)
            : new OutcomeQuestion(_page, _conversation, _recorder, pack).Put(moment, step);
        if (reply.Kind == ReplyKind.PassOver)
        {
            _passedOver.Add(step.Id);
        }

        return reply;
    }

    private Reply PutOther(Moment moment, string wish)
    {
        var choice = new OtherSteps(_page, _conversation, _engine.Pack).Choose(moment, wish);
        if (choice.Kind != ReplyKind.Answer)
        {
            return choice;
        }

        if (moment.Diagnosis.Next.FirstOrDefault(step => step.Id == choice.Text) is not { } step)
        {
            return new CheckQuestions(_page, _conversation, _recorder, _engine.Pack).Put(moment, choice.Text);
        }

        _passedOver.Remove(step.Id);
        return Put(moment with { Step = step });
    }

    private void TakeBack(DiagnosisSession session)
    {
        if (_recorder.TakeBack(session))
        {
            return;
        }

        if (_complaint is null)
        {
            _page.Text(0, "There is nothing to take back.");
        }
        else
        {
            _session = null;
        }
    }
}
