using System.Collections.Concurrent;

namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>Plans by the shape of their question, bounded in number and size. Thread-safe; a hit takes no lock and allocates nothing.</summary>
internal sealed class PlanCache
{
    private readonly int _mostPlans;
    private readonly long _mostCells;
    private readonly ConcurrentDictionary<ulong[], Entry> _entries = new(KeyComparer.Instance);
    private readonly ConcurrentDictionary<ulong[], Entry>.AlternateLookup<ReadOnlySpan<ulong>> _byKey;
    private readonly Lock _evicting = new();
    private long _clock;
    private long _cells;

    public PlanCache(int mostPlans, long mostCells)
    {
        _mostPlans = mostPlans;
        _mostCells = mostCells;
        _byKey = _entries.GetAlternateLookup<ReadOnlySpan<ulong>>();
    }

    public int Count => _entries.Count;

    /// <summary>The plan with this key, or null. Keys of plans of different kinds differ in length.</summary>
    public IPlan? Find(ReadOnlySpan<ulong> key)
    {
        if (!_byKey.TryGetValue(key, out var entry))
        {
            return null;
        }

        Volatile.Write(ref entry.LastUse, Interlocked.Increment(ref _clock));
        return entry.Plan;
    }

    public void Add(ReadOnlySpan<ulong> key, IPlan plan)
    {
        if (_entries.TryAdd(key.ToArray(), new Entry(plan) { LastUse = Interlocked.Increment(ref _clock) }))
        {
            Interlocked.Add(ref _cells, plan.Size);
            EvictWhereFull();
        }
    }

    /// <summary>Makes room for a quarter of the limit at once, so that evicting stays rare.</summary>
    private void EvictWhereFull()
    {
        if (!IsOver(1))
        {
            return;
        }

        lock (_evicting)
        {
            foreach (var (key, entry) in _entries.ToArray().OrderBy(pair => Volatile.Read(ref pair.Value.LastUse)))
            {
                if (!IsOver(0.75))
                {
                    return;
                }

                if (_entries.TryRemove(key, out _))
                {
                    Interlocked.Add(ref _cells, -entry.Plan.Size);
                }
            }
        }
    }

    private bool IsOver(double part) => _entries.Count > _mostPlans * part || Interlocked.Read(ref _cells) > _mostCells * part;

    private sealed class Entry(IPlan plan)
    {
        public long LastUse;

        public IPlan Plan { get; } = plan;
    }

    private sealed class KeyComparer : IEqualityComparer<ulong[]>, IAlternateEqualityComparer<ReadOnlySpan<ulong>, ulong[]>
    {
        public static KeyComparer Instance { get; } = new();

        public bool Equals(ulong[]? x, ulong[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(ulong[] obj) => GetHashCode(obj.AsSpan());

        public bool Equals(ReadOnlySpan<ulong> alternate, ulong[] other) => alternate.SequenceEqual(other);

        public int GetHashCode(ReadOnlySpan<ulong> alternate)
        {
            // Multiply-and-shift per word; shapes differ in a few bits only, so each word has to reach all bits of the hash.
            var hash = 0xCBF29CE484222325UL;
            foreach (var word in alternate)
            {
                hash = (hash ^ word) * 0x9E3779B97F4A7C15UL;
                hash ^= hash >> 29;
            }

            return (int)(hash ^ (hash >> 32));
        }

        public ulong[] Create(ReadOnlySpan<ulong> alternate) => alternate.ToArray();
    }
}
