using DiagRules.Model.Problems;

namespace DiagRules.Packs.Text;

/// <summary>Collects the problems of one load, so that all of them come out in one pass. Not thread-safe.</summary>
internal sealed class ProblemSink
{
    private readonly List<Problem> _problems = [];

    /// <summary>How many there are so far.</summary>
    public int Count => _problems.Count;

    /// <summary>How many of them are errors.</summary>
    public int Errors { get; private set; }

    /// <summary>Whether any of them refuses the pack.</summary>
    public bool HasErrors => Errors > 0;

    /// <summary>Adds one.</summary>
    public void Add(ProblemDescriptor descriptor, SourcePlace place, string message) => Add(new Problem(descriptor, message, place));

    /// <summary>Adds one that was made elsewhere.</summary>
    public void Add(Problem problem)
    {
        _problems.Add(problem);
        Errors += problem.Severity == Severity.Error ? 1 : 0;
    }

    /// <summary>
    /// All of them in order of file, line and column. A fault in a <c>$set</c> template is one fault, however many copies stumble over
    /// it: it is reported for the first member alone.
    /// </summary>
    public IReadOnlyList<Problem> InOrder()
    {
        var firstMember = new Dictionary<(string Code, SourcePlace Place), string>();
        return
        [
            .. _problems
                .Where(problem => problem.Place.Member is not { } member || IsFirst(problem, member))
                .Distinct()
                .OrderBy(problem => problem.Place)
                .ThenBy(problem => problem.Code, StringComparer.Ordinal),
        ];

        bool IsFirst(Problem problem, string member)
        {
            var key = (problem.Code, problem.Place with { Member = null });
            return firstMember.TryAdd(key, member) || firstMember[key] == member;
        }
    }
}
