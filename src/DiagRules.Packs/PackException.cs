using DiagRules.Model.Problems;

namespace DiagRules.Packs;

/// <summary>A pack was refused; thrown only where a caller asked for "the pack or an exception".</summary>
public sealed class PackException : Exception
{
    /// <summary>Makes an exception that carries the problems.</summary>
    public PackException(IReadOnlyList<Problem> problems)
        : base(Describe(problems)) => Problems = problems;

    /// <summary>All problems of the pack.</summary>
    public IReadOnlyList<Problem> Problems { get; }

    private static string Describe(IReadOnlyList<Problem> problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        return "The pack was refused." + string.Concat(problems.Where(problem => problem.Severity == Severity.Error).Select(problem => Environment.NewLine + problem));
    }
}
