using System.CommandLine;
using DiagRules.Model.Cases;
using DiagRules.Model.Problems;
using DiagRules.Packs;

namespace DiagRules.Cli.Inputs;

/// <summary><c>--case</c>: a recorded case whose observations are the facts.</summary>
internal sealed class CaseInput
{
    private readonly Option<string?> _case = new("--case")
    {
        HelpName = "FILE",
        Description = "A recorded case to take complaint, chassis and observations from; FILE#ID where the file holds several",
    };

    /// <summary>Adds the option to a verb.</summary>
    public void AddTo(Command command) => command.Add(_case);

    /// <summary>The case file that is named, or <see langword="null"/>.</summary>
    /// <exception cref="WrongUseException">There is no such file.</exception>
    public CaseName? Read(ParseResult parsed)
    {
        if (parsed.GetValue(_case) is not { } text)
        {
            return null;
        }

        var parts = text.Split('#', 2);
        var name = File.Exists(text) || parts.Length == 1 ? new CaseName(text, null) : new CaseName(parts[0], parts[1]);
        return File.Exists(name.File) ? name : throw new WrongUseException($"There is no file '{name.File}'.");
    }
}

/// <summary>A case, as somebody names it.</summary>
/// <param name="File">The file.</param>
/// <param name="Id">Its id in the file, or <see langword="null"/> for the only one.</param>
internal sealed record CaseName(string File, string? Id)
{
    /// <summary>The case among those that could be read.</summary>
    /// <exception cref="WrongUseException">It was refused, is not there, or there are several.</exception>
    public RecordedCase Pick(PackLoadResult result)
    {
        var cases = result.Pack?.Cases ?? [];
        var ids = cases.Select(one => one.Id).ToList();
        var hasErrors = result.Problems.Any(problem => problem.Severity == Severity.Error);
        if (Id is null && hasErrors)
        {
            // Of several cases the one that is left is not what was asked for.
            throw Refusals.Of(result.Problems, $"No case is taken from '{File}'");
        }

        if (Id is null && cases.Length > 1)
        {
            throw new WrongUseException($"'{File}' holds {cases.Length} cases; name one, as in '{File}#{ids[0]}'. They are {string.Join(", ", ids)}.");
        }

        if (cases.FirstOrDefault(one => Id is null || one.Id == Id) is { } found)
        {
            return found;
        }

        throw hasErrors
            ? Refusals.Of(result.Problems, $"Case '{Id}' could not be read from '{File}'")
            : new WrongUseException(Id is null ? $"'{File}' holds no case." : $"'{File}' holds no case '{Id}'.{Spelling.Hint(Id, ids)}");
    }
}
