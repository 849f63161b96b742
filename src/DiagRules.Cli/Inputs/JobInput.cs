using System.CommandLine;

namespace DiagRules.Cli.Inputs;

/// <summary>A job with all its facts on the command line: what <c>diagnose</c> and <c>explain</c> share.</summary>
internal sealed class JobInput
{
    private readonly PackInput _pack = new();
    private readonly PersonInput _person = new();
    private readonly ComplaintInput _complaint = new();
    private readonly CaseInput _case = new();
    private readonly Option<string[]> _observe = new("--observe") { HelpName = "ID=VALUE", Description = "A fact, as in power-unit=silent or \"fuse-load=0.2 V\" (repeat it for more)" };

    /// <summary>Adds arguments and options to a verb.</summary>
    public void AddTo(Command command)
    {
        _pack.AddTo(command);
        _complaint.AddTo(command);
        _case.AddTo(command);
        command.Add(_observe);
        _person.AddTo(command);
    }

    /// <summary>A session that knows all facts given.</summary>
    /// <exception cref="WrongUseException">Some fact does not fit the pack.</exception>
    public DiagnosisSession Start(ParseResult parsed)
    {
        var named = _case.Read(parsed);
        var loaded = _pack.Load(parsed, named?.File);
        var recorded = named?.Pick(loaded);
        var engine = _pack.Compile(parsed, loaded.Pack!, recorded?.Chassis);
        var session = engine.Start(new SessionOptions
        {
            Complaint = _complaint.Read(parsed, engine) ?? recorded?.Complaint,
            Skill = _person.Skill(parsed),
            Tools = _person.Tools(parsed, engine.Pack),
        });
        foreach (var observation in recorded?.Observations ?? [])
        {
            // The loader has checked the case; what it found implausible is kept and said in the notes.
            session.Observe(observation);
        }

        foreach (var fact in parsed.GetValue(_observe) ?? [])
        {
            Observe(session, fact);
        }

        return session;
    }

    private static void Observe(DiagnosisSession session, string fact)
    {
        var parts = fact.Split('=', 2, StringSplitOptions.TrimEntries);
        if (parts.Length < 2)
        {
            throw new WrongUseException($"'{fact}' is no fact; write id=value, as in power-unit=silent.");
        }

        if (Fact.Read(parts[1]).Observe(session, parts[0]) is { Problem: { } problem })
        {
            throw new WrongUseException($"--observe {fact}: {problem.Message}");
        }
    }
}
