using DiagRules.Model.Problems;

namespace DiagRules.Cli.Rendering;

/// <summary>Problems as lines that compilers print and editors link, and a last line that counts them.</summary>
internal static class ProblemText
{
    /// <summary>Writes the lines; problems a pack accepts with a reason are only counted.</summary>
    public static void Write(TextWriter writer, IReadOnlyList<Problem> problems, int packs)
    {
        var open = problems.Where(problem => problem.Accepted is null).ToList();
        foreach (var problem in open)
        {
            writer.WriteLine(problem);
        }

        writer.WriteLine(Summary(open, [.. problems.Where(problem => problem.Accepted is not null)], packs));
    }

    private static string Summary(List<Problem> open, List<Problem> accepted, int packs)
    {
        string[] counts =
        [
            .. Count(open, Severity.Error, "error", "errors"),
            .. Count(open, Severity.Warning, "warning", "warnings"),
            .. Count(open, Severity.Note, "note", "notes"),
            .. Count(accepted, Severity.Warning, "accepted warning", "accepted warnings"),
            .. Count(accepted, Severity.Note, "accepted note", "accepted notes"),
        ];
        return $"{Words.Count(packs, "pack", "packs")}: {(counts.Length == 0 ? "no problems" : string.Join(", ", counts))}.";
    }

    private static IEnumerable<string> Count(List<Problem> problems, Severity severity, string one, string many)
    {
        var count = problems.Count(problem => problem.Severity == severity);
        return count == 0 ? [] : [Words.Count(count, one, many)];
    }
}
