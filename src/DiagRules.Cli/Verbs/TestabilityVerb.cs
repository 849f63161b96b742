using System.CommandLine;
using DiagRules.Cli.Inputs;
using DiagRules.Testability;

namespace DiagRules.Cli.Verbs;

/// <summary><c>testability</c>: what the checks of a pack can and cannot find and tell apart.</summary>
internal sealed class TestabilityVerb : Verb
{
    private readonly PackInput _pack = new();
    private readonly FormInput _form = new("text", "json", "html");

    public TestabilityVerb()
        : base("testability", "Says what the checks can find and tell apart: causes by checks, ambiguity groups, detection and isolation rates.")
    {
        _pack.AddTo(this);
        _form.AddTo(this);
    }

    public override IReadOnlyList<string> Examples { get; } =
    [
        "diagrules testability rulepacks/corrie-ld4-tail-lift",
        "diagrules testability rulepacks/corrie-ld4-tail-lift --output checks.html",
    ];

    public override int Run(ParseResult parsed, Terminal terminal)
    {
        var form = _form.Form(parsed);
        var study = TestabilityStudy.Of(_pack.Compile(parsed, _pack.Load(parsed).Pack!));
        _form.Write(parsed, terminal, form switch
        {
            "json" => study.ToJson(),
            "html" => study.ToHtml(),
            _ => study.ToText(terminal.Width),
        });
        return ExitCode.Good;
    }
}
