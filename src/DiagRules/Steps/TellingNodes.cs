using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Rules;

namespace DiagRules.Steps;

/// <summary>Which findings and causes a check would decide, with what is known already.</summary>
internal sealed class TellingNodes
{
    private readonly Moment _moment;
    private readonly ILookup<int, (int Node, Condition When)> _byReading;

    public TellingNodes(Moment moment)
    {
        _moment = moment;
        var reads = moment.Pack.Findings
            .Where(finding => IsOpenQuestion(finding.Node))
            .SelectMany(finding => BandConditions.ReadsOf(finding).Select(read => (finding.Node, read.When)));
        var musts = moment.Network.Causes
            .Where(cause => cause.Precondition is not null && IsOpenQuestion(cause.Node))
            .Select(cause => (cause.Node, When: cause.Precondition!.Must));
        _byReading = reads.Concat(musts)
            .SelectMany(pair => Dependence.MeasuredIn(pair.When, moment.Pack).Distinct().Select(reading => (reading, pair)))
            .ToLookup(item => item.reading, item => item.pair);
    }

    /// <summary>Pack nodes that are weighed, not known yet, and would be known afterwards; each once, in order.</summary>
    public IReadOnlyList<int> Of(Check check)
    {
        var nodes = new SortedSet<int>();
        var given = new HashSet<int>();
        foreach (var id in check.Gives)
        {
            switch (_moment.Pack.Find(id))
            {
                case Graded graded when IsOpenQuestion(graded.Node):
                    nodes.Add(graded.Node);
                    break;
                case Reading reading:
                    given.Add(reading.Index);
                    break;
            }
        }

        foreach (var (node, when) in given.SelectMany(reading => _byReading[reading]))
        {
            if (CanBeDecided(when, given))
            {
                nodes.Add(node);
            }
        }

        return [.. nodes];
    }

    /// <summary>Whether the answers to a check are all on record already.</summary>
    public bool IsAnswered(Check check) => check.Gives.All(id => _moment.Pack.Find(id) switch
    {
        Reading reading => _moment.Observed.Readings[reading.Index] is not null,
        Graded graded => _moment.Known[graded.Node] is not null,
        _ => true,
    });

    private bool IsOpenQuestion(int node) => _moment.Network.NodeOf(node) >= 0 && _moment.Known[node] is null;

    /// <summary>A condition can come out true when every reading it rests on is given or known, and nothing known denies it already.</summary>
    private bool CanBeDecided(Condition when, HashSet<int> given)
    {
        var isReady = Dependence.MeasuredIn(when, _moment.Pack)
            .All(reading => given.Contains(reading) || !double.IsNaN(_moment.Views.Lenient.Readings[reading]));
        return isReady && when.Evaluate(_moment.Views.Lenient) != Truth.False;
    }
}
