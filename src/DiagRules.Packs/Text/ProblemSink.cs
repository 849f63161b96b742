using DiagRules.Model.Problems;

namespace DiagRules.Packs.Text;

/// <summary>Collects the problems of one load, so that all of them come out in one pass. Not thread-safe.</summary>
internal sealed class ProblemSink
{
    private readonly List<Problem> _problems = [];

    /// <summary>How many there are so far.</summary>
    public int Count => _problems.Count;

    /// <summary>How many of them are errors.</summary>
    public int Errors => _problems.Count(problem => problem.Severity == Severity.Error);

    /// <summary>Whether any of them refuses the pack.</summary>
    public bool HasErrors => _problems.Exists(problem => problem.Severity == Severity.Error);

    /// <summary>Adds one.</summary>
    public void Add(ProblemDescriptor descriptor, SourcePlace place, string message) =>
        _problems.Add(new Problem(descriptor, message, place));

    /// <summary>Adds one that was made elsewhere.</summary>
    public void Add(Problem problem) => _problems.Add(problem);

    /// <summary>
    /// All of them in order of file, line and column. A fault in a <c>$set</c> template is one fault, however many copies stumble over
    /// it: it is reported for the first member alone.
    /// </summary>
    public IReadOnlyList<Problem> InOrder() =>
    [
        .. _problems
            .DistinctBy(problem => problem.Place.Member is null ? (object)problem : (problem.Code, problem.Place with { Member = null }))
            .OrderBy(problem => problem.Place)
            .ThenBy(problem => problem.Code, StringComparer.Ordinal),
    ];
}
