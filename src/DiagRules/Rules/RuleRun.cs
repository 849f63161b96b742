using DiagRules.Facts;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using NRules;

namespace DiagRules.Rules;

/// <summary>The rules of one session: follows what is observed and holds what is concluded. Not thread-safe.</summary>
/// <remarks>
/// Gates and observations are facts that come and go; everything concluded is linked to the match that brought it about and
/// falls with it. Results are read only after firing.
/// </remarks>
internal sealed class RuleRun(RuleBook book)
{
    private readonly ISession _session = book.CreateSession();
    private readonly Gate?[] _gates = new Gate?[book.Branches.Count];
    private readonly Dictionary<int, Support> _observed = [];

    /// <summary>What rules and readings conclude about findings and causes.</summary>
    public IReadOnlyList<Support> Supports { get; private set; } = [];

    /// <summary>Advice, hazards and deferrals that hold.</summary>
    public IReadOnlyList<Outcome> Outcomes { get; private set; } = [];

    /// <summary>Brings the conclusions in line with what is observed.</summary>
    /// <exception cref="EngineException">The rules do not come to rest; a loaded pack cannot bring this about.</exception>
    public void Settle(ObservedState state, Views views)
    {
        var changes = FollowObservations(state) + FollowGates(state, views);
        if (changes > 0)
        {
            Fire();
        }

        Supports = [.. _session.Query<Support>().AsEnumerable().Where(support => support.Line is not null)];
        Outcomes = [.. _session.Query<Outcome>()];
    }

    private void Fire()
    {
        // Strata are acyclic, so every branch and node fires a bounded number of times; the cap only guards against our own errors.
        var cap = 1000 + (20 * (book.Branches.Count + book.IsConcluded.Length));
        if (_session.Fire(cap) >= cap)
        {
            throw new EngineException($"The rules of pack '{book.Pack.Id}' did not come to rest after {cap} steps.");
        }
    }

    private int FollowObservations(ObservedState state)
    {
        var changes = 0;
        for (var node = 0; node < state.Nodes.Length; node++)
        {
            if (!book.IsWatched[node])
            {
                continue;
            }

            var seen = state.Nodes[node];
            var isStrict = seen is { Trust: >= Observation.RuleThreshold };
            if (_observed.TryGetValue(node, out var present))
            {
                if (seen is not null && present.Grades == seen.Grades && present.IsStrict == isStrict)
                {
                    continue;
                }

                _session.Retract(present);
                _observed.Remove(node);
                changes++;
            }

            if (seen is not null)
            {
                var support = new Support(node, seen.Grades, line: null, isStrict, isWatched: true);
                _observed.Add(node, support);
                _session.Insert(support);
                changes++;
            }
        }

        return changes;
    }

    private int FollowGates(ObservedState state, Views views)
    {
        var changes = 0;
        foreach (var branch in book.Branches)
        {
            var isOpen = IsOpen(branch, state, views);
            var gate = _gates[branch.Index];
            if (isOpen == gate is not null)
            {
                continue;
            }

            changes++;
            if (gate is not null)
            {
                _session.Retract(gate);
                _gates[branch.Index] = null;
            }
            else
            {
                _gates[branch.Index] = gate = MakeGate(branch);
                _session.Insert(gate);
            }
        }

        return changes;
    }

    private static bool IsOpen(Branch branch, ObservedState state, Views views)
    {
        var line = branch.Line;
        if (line.World == World.Strict)
        {
            return branch.IsOpen(views.Strict);
        }

        // A read that takes doubtful readings at their word has nothing to add while there are none.
        return line.StrictTwin is null
            ? branch.IsOpen(views.Lenient)
            : state.HasDoubtful && branch.IsOpen(views.Lenient) && !line.StrictTwin.Branches.Exists(twin => twin.Literals.Count == 0 && twin.IsOpen(views.Strict));
    }

    private Gate MakeGate(Branch branch)
    {
        var isWatched = branch.Line.Node >= 0 && book.IsWatched[branch.Line.Node];
        return branch.Literals.Count == 0 ? new FreeGate(branch, isWatched) : new GuardedGate(branch, isWatched);
    }
}
