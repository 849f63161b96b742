using System.CommandLine;

namespace DiagRules.Cli.Inputs;

/// <summary><c>--format</c>: text for people, the default, or JSON for programs.</summary>
internal sealed class FormatInput
{
    private readonly Option<string?> _format = new("--format") { HelpName = "text|json", Description = "Text for people (default) or JSON for programs" };

    /// <summary>Adds the option to a verb.</summary>
    public void AddTo(Command command) => command.Add(_format);

    /// <summary>Whether JSON is asked for.</summary>
    /// <exception cref="WrongUseException">Neither text nor JSON.</exception>
    public bool IsJson(ParseResult parsed) => parsed.GetValue(_format) switch
    {
        null or "text" => false,
        "json" => true,
        var other => throw new WrongUseException($"There is no format '{other}'; there are text and json."),
    };
}
