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
        "diagrules ask rulepacks/corrie-ld4-tail-lift --skill workshop --save lift-4711.json",
        "diagrules ask rulepacks/corrie-ld4-tail-lift --resume lift-4711.json",
    ];

    public override int Run(ParseResult parsed, Terminal terminal)
    {
        var engine = _pack.Compile(parsed);
        var options = new SessionOptions
        {
            Complaint = _complaint.Read(parsed, engine),
            Skill = _person.Skill(parsed),
            Tools = _person.Tools(parsed, engine.Pack),
            Steps = 0,
        };
        var file = new SessionFile();
        var resumed = Resume(parsed.GetValue(_resume), engine, options, file);
        if (parsed.GetValue(_save) is { } path)
        {
            file.Use(path, mayExist: path == parsed.GetValue(_resume));
        }

        terminal.OnInterrupt = () => terminal.Out.WriteLine(file.Path is null ? "\nEnded, not saved." : $"\nEnded, saved in '{file.Path}'.");
        new Dialogue(terminal, engine, options, file, resumed).Run();
        return ExitCode.Good;
    }

    private static DiagnosisSession? Resume(string? path, DiagnosisEngine engine, SessionOptions options, SessionFile file)
    {
        if (path is null)
        {
            return null;
        }

        var json = SessionFile.Read(path);
        file.Use(path, mayExist: true);
        try
        {
            return engine.Resume(json, options);
        }
        catch (SessionFormatException exception)
        {
            throw new WrongUseException($"'{path}' cannot be resumed: {exception.Message}", exception);
        }
    }
}
