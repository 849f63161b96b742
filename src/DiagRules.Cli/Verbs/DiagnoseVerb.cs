using System.CommandLine;
using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;

namespace DiagRules.Cli.Verbs;

/// <summary><c>diagnose</c>: one answer from given facts.</summary>
internal sealed class DiagnoseVerb : Verb
{
    private readonly JobInput _job = new();
    private readonly FormatInput _format = new();

    public DiagnoseVerb()
        : base("diagnose", "Says what the given facts point to, what to mind, and what to do next.")
    {
        _job.AddTo(this);
        _format.AddTo(this);
    }

    public override IReadOnlyList<string> Examples { get; } =
    [
        """
        diagrules diagnose rulepacks/corrie-ld4-tail-lift --complaint will-not-lift \
          --observe power-unit=clicks-once --observe "battery-rest-volts=24.9 V"
        """,
    ];

    public override int Run(ParseResult parsed, Terminal terminal)
    {
        var isJson = _format.IsJson(parsed);
        var session = _job.Start(parsed);
        var diagnosis = session.Diagnose();
        if (isJson)
        {
            terminal.Out.WriteLine(DiagnosisJson.Write(diagnosis));
            return ExitCode.Good;
        }

        var leads = diagnosis.Hypotheses is [{ Confidence: > 0 } first, ..] ? session.Explain(first.Cause) : null;
        new DiagnosisText(new Page(terminal), session.Engine.Pack).Write(diagnosis, leads);
        return ExitCode.Good;
    }
}
