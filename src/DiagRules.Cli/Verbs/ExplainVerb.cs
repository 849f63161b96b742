using System.CommandLine;
using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;
using DiagRules.Model;

namespace DiagRules.Cli.Verbs;

/// <summary><c>explain</c>: why a cause stands where it stands.</summary>
internal sealed class ExplainVerb : Verb
{
    private readonly JobInput _job = new();
    private readonly Argument<string> _cause = new("CAUSE") { Description = "Id of a cause or precondition" };

    public ExplainVerb()
        : base("explain", "Says why a cause stands where it stands: what speaks for it and what against.")
    {
        _job.AddTo(this);
        Arguments.Insert(1, _cause);
    }

    public override IReadOnlyList<string> Examples { get; } =
        ["diagrules explain rulepacks/corrie-ld4-tail-lift motor-brushes-worn --complaint will-not-lift --observe power-unit=clicks-once"];

    public override int Run(ParseResult parsed, Terminal terminal)
    {
        var session = _job.Start(parsed);
        var pack = session.Engine.Pack;
        var id = parsed.GetRequiredValue(_cause);
        var causes = pack.Causes.Where(cause => cause.IsOn(session.Engine.Chassis)).Select(cause => cause.Id).ToList();
        if (!causes.Contains(id, StringComparer.Ordinal))
        {
            throw new WrongUseException($"Pack '{pack.Id}' has no cause '{id}'.{Spelling.Hint(id, causes)}");
        }

        var page = new Page(terminal);
        PackLine.Write(page, pack, session.Engine.Chassis);
        page.Heading(pack.Find<Cause>(id)!.Title);
        ExplanationText.Write(page, session.Explain(id));
        if (pack.Find<Cause>(id)!.Reason is { } reason)
        {
            page.Item(2, "How it comes about", 24, reason);
        }

        return ExitCode.Good;
    }
}
