using System.CommandLine;
using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;
using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;
using DiagRules.Replay;

namespace DiagRules.Cli.Verbs;

/// <summary><c>replay</c>: plays the recorded cases of packs, with scores and acceptance.</summary>
internal sealed class ReplayVerb : Verb
{
    private readonly Argument<string[]> _packs = new("PACK") { Description = "Folder of a pack", Arity = ArgumentArity.OneOrMore };
    private readonly FormatInput _format = new();
    private readonly SearchInput _search = new();
    private readonly PluginsInput _plugins = new();

    public ReplayVerb()
        : base("replay", "Plays recorded cases: what would the pack have said, and is that good enough?")
    {
        Add(_packs);
        _format.AddTo(this);
        _search.AddTo(this);
        _plugins.AddTo(this);
    }

    public override IReadOnlyList<string> Examples { get; } =
    [
        "diagrules replay rulepacks/corrie-ld4-tail-lift",
        "diagrules replay rulepacks/* --format json",
    ];

    public override int Run(ParseResult parsed, Terminal terminal)
    {
        var isJson = _format.IsJson(parsed);
        var packs = parsed.GetRequiredValue(_packs);
        string[] search = [.. _search.Read(parsed), .. packs.Select(Path.GetDirectoryName).OfType<string>().Where(Directory.Exists).Distinct()];
        var calculations = _plugins.Load(parsed);
        var replays = packs.Select(pack => Play(pack, search, calculations)).ToList();
        if (isJson)
        {
            terminal.Out.WriteLine(ReplayJson.Write(replays));
        }
        else
        {
            ReplayText.Write(new Page(terminal), replays);
        }

        return replays.TrueForAll(replay => replay.IsAccepted) ? ExitCode.Good : ExitCode.NotGood;
    }

    private static PackReplay Play(string path, IEnumerable<string> search, IReadOnlyList<CalculationLibrary> calculations)
    {
        var loaded = PackFolder.Load(path, search, calculations);

        // A case that cannot be read cannot be played either; a verdict on the others would pass over it in silence.
        return loaded.Pack is null || loaded.Problems.Any(problem => problem.Severity == Severity.Error)
            ? throw Refusals.Of(loaded.Problems, $"The pack in '{path}' was refused")
            : PackReplay.Play(loaded.Pack);
    }
}
