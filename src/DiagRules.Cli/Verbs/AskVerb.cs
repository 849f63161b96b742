using System.CommandLine;
using DiagRules.Cli.Asking;
using DiagRules.Cli.Inputs;

namespace DiagRules.Cli.Verbs;

/// <summary><c>ask</c>: a session question by question at the terminal.</summary>
internal sealed class AskVerb : Verb
{
    private readonly PackInput _pack = new();
    private readonly ComplaintInput _complaint = new();
    private readonly PersonInput _person = new();
    private readonly Option<string?> _save = new("--save") { HelpName = "FILE", Description = "Keep the session in a new file, written after every answer" };
    private readonly Option<string?> _resume = new("--resume") { HelpName = "FILE", Description = "Go on with a saved session; it stays saved in the same file unless --save names another" };

    public AskVerb()
        : base("ask", "Asks, question by question, what is worth knowing next, until the fault is found and cured.")
    {
        _pack.AddTo(this);
        _complaint.AddTo(this);
        _person.AddTo(this);
        Add(_save);
        Add(_resume);
    }

    public override IReadOnlyList<string> Examples { get; } =
    [
        "diagrules ask rulepacks/corrie-ld4-tail-lift --save lift-4711.json",
        "diagrules ask rulepacks/corrie-ld4-tail-lift --resume lift-4711.json",
    ];

    public override int Run(ParseResult parsed, Terminal terminal)
    {
        var pack = _pack.Load(parsed).Pack!;
        var resume = parsed.GetValue(_resume);
        var saved = resume is null ? null : SessionFile.Read(resume);
        var engine = _pack.Compile(parsed, pack, SessionFile.ChassisOf(saved));
        var options = new SessionOptions
        {
            Complaint = _complaint.Read(parsed, engine),
            Skill = _person.Skill(parsed),
            Tools = _person.Tools(parsed, pack),
            Steps = 0,
        };
        if (saved is not null && options.Complaint is not null)
        {
            throw new WrongUseException("A saved session has its complaint already; leave out either --complaint or --resume.");
        }

        var resumed = saved is null ? null : Resume(resume!, saved, engine, options);
        var file = new SessionFile();
        if ((parsed.GetValue(_save) ?? resume) is { } path)
        {
            file.Use(path, mayExist: path == resume);
        }

        terminal.OnInterrupt = () => terminal.Out.WriteLine(file.Path is null ? "\nEnded, not saved." : $"\nEnded, saved in '{file.Path}'.");
        new Dialogue(terminal, engine, options, file, resumed).Run();
        return ExitCode.Good;
    }

    private static DiagnosisSession Resume(string path, string saved, DiagnosisEngine engine, SessionOptions options)
    {
        try
        {
            return engine.Resume(saved, options);
        }
        catch (SessionFormatException exception)
        {
            throw new WrongUseException($"'{path}' cannot be resumed: {exception.Message}", exception);
        }
    }
}
