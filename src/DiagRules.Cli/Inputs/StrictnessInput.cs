using System.CommandLine;
using DiagRules.Model.Problems;

namespace DiagRules.Cli.Inputs;

/// <summary><c>--warnings-as-errors</c>: all warnings, or those of some codes, count as errors.</summary>
internal sealed class StrictnessInput
{
    private readonly Option<string[]> _option = new("--warnings-as-errors")
    {
        HelpName = "[CODES]",
        Description = "Count warnings as errors: all, or those of some codes (DR2012,DR5001)",
        Arity = ArgumentArity.ZeroOrMore,
    };

    /// <summary>Adds the option to a verb.</summary>
    public void AddTo(Command command) => command.Add(_option);

    /// <summary>What was asked for.</summary>
    /// <exception cref="WrongUseException">A code that no warning has.</exception>
    public Strictness Read(ParseResult parsed)
    {
        if (parsed.GetResult(_option) is not { Implicit: false })
        {
            return new Strictness(IsAll: false, [], []);
        }

        // The option's codes may be left out, so that the first pack after it looks like one; a word without the form of a code is a pack.
        var words = parsed.GetValue(_option) ?? [];
        var packs = words.Where(word => !word.StartsWith("DR", StringComparison.Ordinal) || Path.Exists(word)).ToList();
        var codes = words.Except(packs).SelectMany(word => word.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).ToList();
        var known = ProblemCatalogue.All.Where(descriptor => descriptor.Severity == Severity.Warning).Select(descriptor => descriptor.Code).ToHashSet();
        return codes.FirstOrDefault(code => !known.Contains(code)) is { } unknown
            ? throw new WrongUseException($"No warning has the code '{unknown}'.{Spelling.Hint(unknown, known)}")
            : new Strictness(IsAll: codes.Count == 0, codes, packs);
    }
}

/// <summary>Which warnings count as errors.</summary>
/// <param name="IsAll">All of them.</param>
/// <param name="Codes">Those of these codes.</param>
/// <param name="Packs">Packs that stood after the option.</param>
internal sealed record Strictness(bool IsAll, IReadOnlyList<string> Codes, IReadOnlyList<string> Packs)
{
    /// <summary>A problem as it counts; one that the pack accepts stays what it is.</summary>
    public Problem Raise(Problem problem) =>
        problem is { Severity: Severity.Warning, Accepted: null } && (IsAll || Codes.Contains(problem.Code, StringComparer.Ordinal))
            ? problem with { Descriptor = problem.Descriptor with { Severity = Severity.Error } }
            : problem;
}
