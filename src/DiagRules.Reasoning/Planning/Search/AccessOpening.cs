namespace DiagRules.Reasoning.Planning.Search;

/// <summary>The cheapest way to have a set of accesses open together.</summary>
/// <remarks>
/// Of equally cheap ways the one with the fewest openings counts, then the one that leaves most open. Bits beyond the accesses are passed through.
/// </remarks>
internal sealed class AccessOpening
{
    /// <summary>The most accesses whose order is searched; at most 2 to this power states.</summary>
    internal const int MostTangled = 12;

    private readonly IReadOnlyList<PlanAccess> _accesses;
    private readonly int[][] _excludes;

    internal AccessOpening(IReadOnlyList<PlanAccess> accesses)
    {
        _accesses = accesses;
        _excludes = [.. Enumerable.Range(0, accesses.Count).Select(ExcludedBy)];
        HasExclusions = _excludes.Any(e => e.Length > 0);
    }

    /// <summary>Whether any access closes another one. Without that the order of openings never matters.</summary>
    internal bool HasExclusions { get; }

    internal bool IsInCircle(int access)
    {
        var seen = new HashSet<int>();
        var pending = new Stack<int>(_accesses[access].Needs);
        while (pending.TryPop(out var next))
        {
            if (next == access)
            {
                return true;
            }

            if (seen.Add(next))
            {
                foreach (var need in _accesses[next].Needs)
                {
                    pending.Push(need);
                }
            }
        }

        return false;
    }

    /// <summary>
    /// Whether so many accesses are involved, some of them excluding others, that trying their orders could take for ever.
    /// </summary>
    internal bool IsTooTangled(IReadOnlyList<int> needs)
    {
        var closure = Closure(needs);
        return closure.Length > MostTangled && closure.Any(a => _excludes[a].Any(closure.Contains));
    }

    internal bool CanBeOpenTogether(IReadOnlyList<int> needs) => TryOpen(Bits.Empty(_accesses.Count), needs, out _, out _);

    /// <summary>Opens what is needed. False when that cannot be open together.</summary>
    internal bool TryOpen(Bits open, IReadOnlyList<int> needs, out double cost, out Bits after)
    {
        var toOpen = new List<int>();
        var involved = new HashSet<int>(needs);
        foreach (var need in needs)
        {
            Collect(need, open, toOpen, involved);
        }

        if (involved.Any(a => _excludes[a].Any(involved.Contains)))
        {
            return TryOpenInSomeOrder(open, needs, out cost, out after);
        }

        cost = 0;
        after = open;
        foreach (var access in toOpen)
        {
            cost += _accesses[access].Cost;
            after = after.Opened(access, _excludes[access]);
        }

        return true;
    }

    /// <summary>Adds an access that is closed, after what it needs.</summary>
    private void Collect(int access, Bits open, List<int> toOpen, HashSet<int> involved)
    {
        if (open.Contains(access) || toOpen.Contains(access))
        {
            return;
        }

        foreach (var need in _accesses[access].Needs)
        {
            involved.Add(need);
            Collect(need, open, toOpen, involved);
        }

        involved.Add(access);
        toOpen.Add(access);
    }

    /// <summary>Uniform-cost search over what is open: an access may have to be opened, used for another one, and closed again.</summary>
    private bool TryOpenInSomeOrder(Bits open, IReadOnlyList<int> needs, out double cost, out Bits after)
    {
        var usable = Closure(needs);
        var queue = new PriorityQueue<Bits, (double Cost, int Openings)>();
        var settled = new HashSet<Bits>();
        queue.Enqueue(open, (0, 0));
        (double Cost, int Openings)? found = null;
        after = open;
        while (queue.TryDequeue(out var state, out var spent) && (found is null || spent == found))
        {
            if (!settled.Add(state))
            {
                continue;
            }

            if (needs.All(state.Contains))
            {
                after = found is null ? state : Fuller(after, state);
                found = spent;
                continue;
            }

            foreach (var access in usable.Where(a => !state.Contains(a) && _accesses[a].Needs.All(state.Contains)))
            {
                queue.Enqueue(state.Opened(access, _excludes[access]), (spent.Cost + _accesses[access].Cost, spent.Openings + 1));
            }
        }

        cost = found?.Cost ?? double.PositiveInfinity;
        return found is not null;
    }

    private static Bits Fuller(Bits one, Bits other)
    {
        var order = one.Count != other.Count ? one.Count.CompareTo(other.Count) : one.CompareTo(other);
        return order >= 0 ? one : other;
    }

    private int[] Closure(IReadOnlyList<int> needs)
    {
        var closure = new SortedSet<int>();
        var pending = new Stack<int>(needs);
        while (pending.TryPop(out var next))
        {
            if (closure.Add(next))
            {
                foreach (var need in _accesses[next].Needs)
                {
                    pending.Push(need);
                }
            }
        }

        return [.. closure];
    }

    private int[] ExcludedBy(int access) =>
        [.. Enumerable.Range(0, _accesses.Count).Where(other => other != access && (Lists(access, other) || Lists(other, access)))];

    private bool Lists(int access, int other) => _accesses[access].Excludes.Contains(other);
}
