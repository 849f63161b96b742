using System.CommandLine;
using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;
using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;
using DiagRules.Replay;

namespace DiagRules.Cli.Verbs;

/// <summary><c>validate</c>: all problems of packs and their recorded cases.</summary>
internal sealed class ValidateVerb : Verb
{
    private readonly Argument<string[]> _packs = new("PACK") { Description = "Folder of a pack", Arity = ArgumentArity.ZeroOrMore };
    private readonly FormatInput _format = new();
    private readonly StrictnessInput _strictness = new();
    private readonly SearchInput _search = new();
    private readonly PluginsInput _plugins = new();

    public ValidateVerb()
        : base("validate", "Shows all problems of packs and their recorded cases.")
    {
        Add(_packs);
        _format.AddTo(this);
        _strictness.AddTo(this);
        _search.AddTo(this);
        _plugins.AddTo(this);
    }

    public override IReadOnlyList<string> Examples { get; } =
    [
        "diagrules validate rulepacks/corrie-ld4-tail-lift",
        "diagrules validate rulepacks/* --warnings-as-errors=DR2012,DR5001",
    ];

    public override int Run(ParseResult parsed, Terminal terminal)
    {
        var isJson = _format.IsJson(parsed);
        var strictness = _strictness.Read(parsed);
        string[] packs = [.. parsed.GetValue(_packs) ?? [], .. strictness.Packs];
        if (packs.Length == 0)
        {
            throw new WrongUseException("'validate' needs PACK: Folder of a pack. See 'diagrules validate --help'.");
        }

        string[] search = [.. _search.Read(parsed), .. packs.Select(Path.GetDirectoryName).OfType<string>().Where(Directory.Exists).Distinct()];
        var calculations = _plugins.Load(parsed);
        var loaded = 0;
        var problems = new List<Problem>();
        foreach (var pack in packs)
        {
            try
            {
                problems.AddRange(ProblemsOf(pack, search, calculations).Select(strictness.Raise));
                loaded++;
            }
            catch (Exception exception) when (exception is WrongUseException or EngineException)
            {
                // The other packs are still worth looking at.
                terminal.Error.WriteLine(exception.Message);
            }
        }

        if (isJson)
        {
            terminal.Out.WriteLine(ProblemJson.Write(problems));
        }
        else if (loaded > 0)
        {
            ProblemText.Write(terminal.Out, problems, loaded);
        }

        return loaded < packs.Length ? ExitCode.WrongUse
            : problems.Any(problem => problem.Severity == Severity.Error) ? ExitCode.NotGood
            : ExitCode.Good;
    }

    /// <summary>What the text shows, and what playing its cases shows, in order of place.</summary>
    private static IEnumerable<Problem> ProblemsOf(string path, IEnumerable<string> search, IReadOnlyList<CalculationLibrary> calculations)
    {
        var loaded = PackFolder.Load(path, search, calculations);
        return loaded.Pack is null ? loaded.Problems : loaded.Problems.Concat(CaseChecks.Run(loaded.Pack)).OrderBy(problem => problem.Place);
    }
}
