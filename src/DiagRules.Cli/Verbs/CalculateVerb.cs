using System.CommandLine;
using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;

namespace DiagRules.Cli.Verbs;

/// <summary><c>calculate</c>: one calculation by itself, or a list of those there are.</summary>
internal sealed class CalculateVerb : Verb
{
    private readonly CalculationInput _calculation = new();
    private readonly FormatInput _format = new();
    private readonly PluginsInput _plugins = new();
    private readonly Option<string?> _list = new("--list")
    {
        HelpName = "[TEXT]",
        Description = "List the calculations, all or those with this text in their name, title or parameters",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public CalculateVerb()
        : base("calculate", "Computes one of the calculations that packs may call, with its formula, source and range.")
    {
        _calculation.AddTo(this);
        Add(_list);
        _plugins.AddTo(this);
        _format.AddTo(this);
    }

    public override IReadOnlyList<string> Examples { get; } =
    [
        "diagrules calculate locked-rotor-current supply=\"10.5 V\" resistance=\"30 mohm\"",
        "diagrules calculate --list fuse",
    ];

    public override int Run(ParseResult parsed, Terminal terminal)
    {
        var isJson = _format.IsJson(parsed);
        return parsed.GetResult(_list) is { Implicit: false } ? List(parsed, terminal, isJson) : Compute(parsed, terminal, isJson);
    }

    private int List(ParseResult parsed, Terminal terminal, bool isJson)
    {
        if (_calculation.Name(parsed) is { } name)
        {
            throw new WrongUseException($"'--list' computes nothing; leave out either '--list' or '{name}'.");
        }

        var text = parsed.GetValue(_list) ?? "";
        var listed = CalculationList.Matching(_plugins.Load(parsed), text);
        if (isJson)
        {
            terminal.Out.WriteLine(CalculationJson.Write(listed));
        }
        else
        {
            CalculationText.Write(new Page(terminal), listed, text);
        }

        return listed.Count > 0 ? ExitCode.Good : ExitCode.NotGood;
    }

    private int Compute(ParseResult parsed, Terminal terminal, bool isJson)
    {
        var call = _calculation.Read(parsed, _plugins.Load(parsed));
        var result = call.Compute();
        if (isJson)
        {
            terminal.Out.WriteLine(CalculationJson.Write(call, result));
        }
        else
        {
            CalculationText.Write(new Page(terminal), call, result);
        }

        return result.IsComputed ? ExitCode.Good : ExitCode.NotGood;
    }
}
