namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Steps with what they promise, best first once sorted.</summary>
internal sealed class Ranking(int capacity)
{
    private readonly Entry[] _entries = new Entry[capacity];

    internal int Count { get; private set; }

    internal Entry this[int index] => _entries[index];

    internal void Clear() => Count = 0;

    internal void Add(int step, double promise) => _entries[Count++] = new Entry(step, promise);

    /// <summary>Makes a step look better when there is reason to; its place in the ranking follows.</summary>
    internal void Promise(int step, double promise)
    {
        for (var i = 0; i < Count; i++)
        {
            if (_entries[i].Step == step && promise < _entries[i].Promise)
            {
                _entries[i] = new Entry(step, promise);
            }
        }
    }

    internal void Sort() => Array.Sort(_entries, 0, Count);

    /// <param name="Step">A check, or the complement of a repair.</param>
    /// <param name="Promise">Expected cost with this step first, as far as a look shows.</param>
    internal readonly record struct Entry(int Step, double Promise) : IComparable<Entry>
    {
        public int CompareTo(Entry other) => Promise.CompareTo(other.Promise) is var order && order != 0 ? order : Step.CompareTo(other.Step);
    }
}
