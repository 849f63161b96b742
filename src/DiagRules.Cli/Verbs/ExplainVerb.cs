using System.CommandLine;
using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Cli.Verbs;

/// <summary><c>explain</c>: why a cause stands where it stands.</summary>
internal sealed class ExplainVerb : Verb
{
    private readonly JobInput _job = new();
    private readonly FormatInput _format = new();
    private readonly Argument<string> _cause = new("CAUSE") { Description = "Id of a cause or precondition" };

    public ExplainVerb()
        : base("explain", "Says why a cause stands where it stands: what speaks for it and what against.")
    {
        _job.AddTo(this);
        Arguments.Insert(1, _cause);
        _format.AddTo(this);
    }

    public override IReadOnlyList<string> Examples { get; } =
    [
        """
        diagrules explain rulepacks/corrie-ld4-tail-lift motor-brushes-worn \
          --complaint will-not-lift --observe power-unit=clicks-once
        """,
    ];

    public override int Run(ParseResult parsed, Terminal terminal)
    {
        var isJson = _format.IsJson(parsed);
        var session = _job.Start(parsed);
        var pack = session.Engine.Pack;
        var id = parsed.GetRequiredValue(_cause);
        var causes = pack.Causes.Where(cause => cause.IsOn(session.Engine.Chassis)).Select(cause => cause.Id).ToList();
        if (!causes.Contains(id, StringComparer.Ordinal))
        {
            throw new WrongUseException($"Pack '{pack.Id}' has no cause '{id}'.{Spelling.Hint(id, causes)}");
        }

        var explanation = session.Explain(id);
        if (isJson)
        {
            terminal.Out.WriteLine(ExplanationJson.Write(session.Engine, explanation));
        }
        else
        {
            Write(new Page(terminal), session.Engine, explanation);
        }

        return ExitCode.Good;
    }

    private static void Write(Page page, DiagnosisEngine engine, CauseExplanation explanation)
    {
        PackLine.Write(page, engine.Pack, engine.Chassis);
        page.Heading(explanation.Title);
        ExplanationText.Write(page, explanation);
        page.Item(2, "How it comes about", 24, engine.Pack.Find<Cause>(explanation.Cause)?.Reason ?? "");
    }
}
