using DiagRules.Model.Problems;

namespace DiagRules.Packs.Text;

/// <summary>Collects the problems of one load, so that all of them come out in one pass. Not thread-safe.</summary>
internal sealed class ProblemSink
{
    private readonly List<Problem> _problems = [];

    /// <summary>How many there are so far.</summary>
    public int Count => _problems.Count;

    /// <summary>Whether any of them refuses the pack.</summary>
    public bool HasErrors => _problems.Exists(problem => problem.Severity == Severity.Error);

    /// <summary>Adds one.</summary>
    public void Add(ProblemDescriptor descriptor, SourcePlace place, string message) =>
        _problems.Add(new Problem(descriptor, message, place));

    /// <summary>Adds one that was made elsewhere.</summary>
    public void Add(Problem problem) => _problems.Add(problem);

    /// <summary>All of them in order of file, line and column; doubles from <c>$set</c> copies of one place once.</summary>
    public IReadOnlyList<Problem> InOrder() =>
        [.. _problems.Distinct().OrderBy(problem => problem.Place).ThenBy(problem => problem.Code, StringComparer.Ordinal)];
}
