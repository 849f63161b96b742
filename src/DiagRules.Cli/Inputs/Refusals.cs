using DiagRules.Cli.Rendering;
using DiagRules.Model.Problems;

namespace DiagRules.Cli.Inputs;

/// <summary>Why something could not be used: the errors at their places, and a last line that says what came of them.</summary>
internal static class Refusals
{
    /// <summary>The exception that says so.</summary>
    public static WrongUseException Of(IReadOnlyList<Problem> problems, string outcome)
    {
        var errors = problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.ToString()).ToList();
        return new WrongUseException(string.Join(Environment.NewLine, [.. errors, $"{outcome}: {Words.Count(errors.Count, "error", "errors")}."]));
    }
}
