using System.Numerics;

namespace DiagRules.Reasoning.Planning.Search;

/// <summary>A small set of indices as a value: equal contents are equal. Never changed once shared.</summary>
internal readonly struct Bits : IEquatable<Bits>, IComparable<Bits>
{
    private readonly ulong[] _words;

    private Bits(ulong[] words) => _words = words;

    internal static Bits Empty(int capacity) => new(new ulong[(capacity + 63) / 64]);

    internal static Bits Of(int capacity, Predicate<int> contains)
    {
        var bits = Empty(capacity);
        for (var i = 0; i < capacity; i++)
        {
            bits._words[i >> 6] |= contains(i) ? 1UL << (i & 63) : 0;
        }

        return bits;
    }

    internal int Count
    {
        get
        {
            var count = 0;
            foreach (var word in _words)
            {
                count += BitOperations.PopCount(word);
            }

            return count;
        }
    }

    /// <summary>The whole set as a mask; only for sets of up to 64.</summary>
    internal ulong Mask => _words.Length == 0 ? 0 : _words[0];

    /// <summary>Changes one element in place; only for a set that nobody else holds.</summary>
    internal void Set(int index, bool isMember)
    {
        var bit = 1UL << (index & 63);
        _words[index >> 6] = isMember ? _words[index >> 6] | bit : _words[index >> 6] & ~bit;
    }

    internal bool Contains(int index) => (_words[index >> 6] >> (index & 63) & 1) != 0;

    internal Bits With(int index)
    {
        if (Contains(index))
        {
            return this;
        }

        var words = (ulong[])_words.Clone();
        words[index >> 6] |= 1UL << (index & 63);
        return new Bits(words);
    }

    internal Bits Union(Bits other)
    {
        var words = (ulong[])_words.Clone();
        for (var i = 0; i < words.Length; i++)
        {
            words[i] |= other._words[i];
        }

        return new Bits(words);
    }

    internal bool IsWithin(Bits other)
    {
        for (var i = 0; i < _words.Length; i++)
        {
            if ((_words[i] & ~other._words[i]) != 0)
            {
                return false;
            }
        }

        return true;
    }

    internal bool Overlaps(Bits other)
    {
        for (var i = 0; i < _words.Length; i++)
        {
            if ((_words[i] & other._words[i]) != 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Adds a mask; only for sets of up to 64.</summary>
    internal Bits With(ulong mask) => (mask & ~Mask) == 0 ? this : new Bits([Mask | mask]);

    /// <summary>Opens one access: its own bit set, those it excludes cleared.</summary>
    internal Bits Opened(int index, int[] excluded)
    {
        var words = (ulong[])_words.Clone();
        foreach (var other in excluded)
        {
            words[other >> 6] &= ~(1UL << (other & 63));
        }

        words[index >> 6] |= 1UL << (index & 63);
        return new Bits(words);
    }

    public bool Equals(Bits other) => _words.AsSpan().SequenceEqual(other._words);

    public override bool Equals(object? obj) => obj is Bits other && Equals(other);

    public override int GetHashCode()
    {
        var hash = 0UL;
        foreach (var word in _words)
        {
            hash = (hash ^ word) * 0x9E3779B97F4A7C15UL;
            hash ^= hash >> 29;
        }

        return (int)(hash ^ hash >> 32);
    }

    /// <summary>An arbitrary but fixed order, so that equally good choices fall the same way everywhere.</summary>
    public int CompareTo(Bits other) => _words.AsSpan().SequenceCompareTo(other._words);
}
