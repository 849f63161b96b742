using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;

namespace DiagRules.Facts;

/// <summary>
/// What a record of observations amounts to: the latest of each id that counts, for the rules and for the weighing. Read anew
/// from the whole record after every change, so that withdrawing an observation is the same as never having made it.
/// </summary>
internal sealed class ObservedState
{
    private readonly PackIndex _index;
    private readonly HashSet<string> _altered = new(StringComparer.Ordinal);
    private double? _workedTrust;

    public ObservedState(PackIndex index)
    {
        _index = index;
        var pack = index.Pack;
        Readings = new ReadingObservation?[pack.Readings.Length];
        WeighedReadings = new ReadingObservation?[pack.Readings.Length];
        Nodes = new NodeObservation?[pack.Nodes.Length];
        WeighedNodes = new NodeObservation?[pack.Nodes.Length];
        Unanswered = new Skill?[pack.Nodes.Length + pack.Readings.Length];
    }

    /// <summary>Latest value of each reading.</summary>
    public ReadingObservation?[] Readings { get; }

    /// <summary>The same, but from before a check altered the machine.</summary>
    public ReadingObservation?[] WeighedReadings { get; }

    /// <summary>Latest observation of each finding or cause.</summary>
    public NodeObservation?[] Nodes { get; }

    /// <summary>The same, but from before a check altered the machine.</summary>
    public NodeObservation?[] WeighedNodes { get; }

    /// <summary>Ids that a check may have altered: for the weighing only what was seen before counts.</summary>
    public IReadOnlySet<string> Altered => _altered;

    /// <summary>
    /// Set where somebody says that the fault is there every time although the machine was seen working: the two sides of that
    /// contradiction.
    /// </summary>
    public (NodeObservation Said, NodeObservation Worked)? PatternClash { get; private set; }

    /// <summary>Repairs tried in vain, by id, that weigh.</summary>
    public HashSet<string> TriedInVain { get; } = new(StringComparer.Ordinal);

    /// <summary>Every repair that was tried, by id.</summary>
    public HashSet<string> Tried { get; } = new(StringComparer.Ordinal);

    /// <summary>Repairs that cured the complaint, by id.</summary>
    public HashSet<string> Cured { get; } = new(StringComparer.Ordinal);

    /// <summary>Best skill that could not tell, by node, then by reading behind the nodes.</summary>
    public Skill?[] Unanswered { get; }

    /// <summary>Whether anything counts that is believed less than rules demand.</summary>
    public bool HasDoubtful { get; private set; }

    /// <summary>Values set aside, as sentences.</summary>
    public List<string> SetAside { get; } = [];

    /// <summary>Reads a complaint and a record.</summary>
    public static ObservedState Of(PackIndex index, Complaint? complaint, IEnumerable<Observation> record)
    {
        var state = new ObservedState(index);
        var ownerTrust = index.Pack.Trust.GetValueOrDefault(Skill.Owner, 1);
        foreach (var meant in complaint?.Means ?? [])
        {
            state.Count(index.Pack.Nodes[meant.Node], new NodeObservation(meant.Grades, ownerTrust, NodeObservation.Complaint));
        }

        foreach (var observation in record)
        {
            state.Count(observation);
        }

        state.FollowPattern();
        return state;
    }

    /// <summary>How far an observation is believed.</summary>
    public static double TrustOf(Observation observation, Pack pack) =>
        observation.Trust ?? (observation.By is { } by ? pack.Trust.GetValueOrDefault(by, 1) : 1);

    private void Count(Observation observation)
    {
        var pack = _index.Pack;
        var trust = TrustOf(observation, pack);
        if (observation.Value is Tried tried)
        {
            Count(observation.Id, tried.Result, trust);
            return;
        }

        var entry = pack.Find(observation.Id);
        if (entry is null)
        {
            return;
        }

        if (observation.WhileWorking)
        {
            _workedTrust = Math.Max(_workedTrust ?? 0, trust);
            if (!IsLasting(entry))
            {
                return;
            }
        }

        switch (observation.Value, entry)
        {
            case (CannotTell, _):
                Forget(entry, observation.By ?? Skill.Workshop);
                break;
            case (Measured measured, Reading reading):
                Count(reading, measured.Quantity.Si, trust);
                break;
            case (Seen seen, Graded graded):
                Count(graded, new NodeObservation(seen.Grades, trust, NodeObservation.Observation));
                break;
        }
    }

    /// <summary>Whatever was seen while the machine worked says that the fault comes and goes.</summary>
    private void FollowPattern()
    {
        if (_workedTrust is not { } trust || _index.PatternNode < 0)
        {
            return;
        }

        var node = _index.PatternNode;
        var worked = new NodeObservation(GradeSet.Of(1), trust, NodeObservation.Working);
        if (Nodes[node] is { } said && !said.Grades.Overlaps(worked.Grades))
        {
            PatternClash = (said, worked);
            Nodes[node] = WeighedNodes[node] = null;
            return;
        }

        Nodes[node] = WeighedNodes[node] = worked;
    }

    private void Count(string repair, TriedResult result, double trust)
    {
        Tried.Add(repair);
        if (result == TriedResult.NoChange && trust >= Observation.RuleThreshold)
        {
            TriedInVain.Add(repair);
        }
        else if (result == TriedResult.Cured)
        {
            Cured.Add(repair);
        }
    }

    private void Count(Reading reading, double si, double trust)
    {
        if (double.IsFinite(si) && reading.Plausible is { } plausible && !plausible.Contains(si))
        {
            var value = Model.Quantities.Quantity.FromSi(si, reading.Unit);
            SetAside.Add($"'{reading.Id}' of {value} lies outside the plausible {plausible}; it is kept on record and used for nothing.");
            return;
        }

        HasDoubtful |= trust < Observation.RuleThreshold;
        Readings[reading.Index] = new(si, trust);
        Unanswered[_index.Pack.Nodes.Length + reading.Index] = null;
        if (!_altered.Contains(reading.Id))
        {
            WeighedReadings[reading.Index] = Readings[reading.Index];
        }

        Alter(reading.Id);
    }

    private void Count(Graded graded, NodeObservation seen)
    {
        HasDoubtful |= seen.Trust < Observation.RuleThreshold;
        Nodes[graded.Node] = seen;
        Unanswered[graded.Node] = null;
        if (!_altered.Contains(graded.Id))
        {
            WeighedNodes[graded.Node] = seen;
        }

        if (!seen.Grades.Contains(0))
        {
            Alter(graded.Id);
        }
    }

    private void Alter(string given)
    {
        foreach (var check in _index.AlteringChecks[given])
        {
            _altered.UnionWith(check.Alters);
        }
    }

    private void Forget(Entry entry, Skill by)
    {
        if (entry is Reading reading)
        {
            Readings[reading.Index] = null;
            WeighedReadings[reading.Index] = _altered.Contains(reading.Id) ? WeighedReadings[reading.Index] : null;
            Unanswered[_index.Pack.Nodes.Length + reading.Index] = by;
        }
        else if (entry is Graded { Node: var node } && Nodes[node]?.From == NodeObservation.Complaint)
        {
            // Who cannot tell more has not taken the complaint back.
            Unanswered[node] = by;
        }
        else if (entry is Graded graded)
        {
            Nodes[graded.Node] = null;
            WeighedNodes[graded.Node] = _altered.Contains(graded.Id) ? WeighedNodes[graded.Node] : null;
            Unanswered[graded.Node] = by;
        }
    }

    private static bool IsLasting(Entry entry) => entry switch
    {
        Reading reading => reading.IsLasting,
        Finding finding => finding.IsLasting,
        _ => true,
    };
}
