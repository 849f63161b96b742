using System.CommandLine;
using DiagRules.Charts;
using DiagRules.Cli.Inputs;

namespace DiagRules.Cli.Verbs;

/// <summary><c>chart</c>: the troubleshooting chart that the planner would follow, to print.</summary>
internal sealed class ChartVerb : Verb
{
    private readonly JobInput _job = new();
    private readonly FormInput _form = new("text", "svg", "html");
    private readonly Option<int?> _places = new("--places") { HelpName = "NUMBER", Description = "Plan at most so many places (default 150); more draw rarer ways too and take longer" };

    public ChartVerb()
        : base("chart", "Draws the troubleshooting chart of what would be done whatever the answers, to print.")
    {
        _job.AddTo(this);
        Add(_places);
        _form.AddTo(this);
    }

    public override IReadOnlyList<string> Examples { get; } =
    [
        "diagrules chart rulepacks/corrie-ld4-tail-lift --complaint will-not-lift",
        "diagrules chart rulepacks/corrie-ld4-tail-lift --complaint sinks --skill workshop --output sinks.html",
    ];

    public override int Run(ParseResult parsed, Terminal terminal)
    {
        var form = _form.Form(parsed);
        var options = new ChartOptions();
        options.Places = parsed.GetValue(_places) ?? options.Places;
        if (options.Places < 1)
        {
            throw new WrongUseException($"--places {options.Places} plans nothing; 1 or more is expected.");
        }

        var chart = TroubleshootingChart.Draw(_job.Start(parsed), options);
        _form.Write(parsed, terminal, form switch
        {
            "svg" => chart.ToSvg(),
            "html" => chart.ToHtml(),
            _ => chart.ToText(terminal.Width),
        });
        return ExitCode.Good;
    }
}
