using System.Numerics;

namespace DiagRules.Reasoning.Testability;

/// <summary>The minimal sets that have a member in each of some given sets (minimal hitting sets), one given set after the other (Berge 1989).</summary>
internal sealed class MinimalSets(int most)
{
    private List<BigInteger> _sets = [BigInteger.Zero];

    internal bool IsComplete { get; private set; } = true;

    internal void Hit(IEnumerable<BigInteger> given)
    {
        // Small ones first: they decide most, and what contains one of them needs no work.
        BigInteger[] ordered = [.. given.OrderBy(Size).ThenBy(s => s)];
        foreach (var set in ordered)
        {
            Hit(set);
        }

        if (!IsComplete)
        {
            // A set that was dropped on the way may have been part of one that was kept.
            _sets = [.. _sets.Select(s => Reduced(s, ordered)).Distinct()];
        }
    }

    internal IReadOnlyList<IReadOnlyList<int>> InOrder(int capacity) =>
        [.. _sets.Select(s => Members(s, capacity)).OrderBy(m => m.Length).ThenBy(m => m, Comparer<int[]>.Create((a, b) => a.AsSpan().SequenceCompareTo(b)))];

    private void Hit(BigInteger given)
    {
        List<BigInteger> hitting = [.. _sets.Where(s => !(s & given).IsZero)];
        var grown = new List<BigInteger>();
        foreach (var set in _sets.Where(s => (s & given).IsZero))
        {
            for (var rest = given; !rest.IsZero; rest &= rest - 1)
            {
                var with = set | (rest & -rest);
                if (!hitting.Exists(h => (h & with) == h))
                {
                    grown.Add(with);
                }
            }
        }

        hitting.AddRange(grown.Distinct());
        if (hitting.Count > most)
        {
            IsComplete = false;
            hitting = [.. hitting.OrderBy(Size).ThenBy(s => s).Take(most)];
        }

        _sets = hitting;
    }

    private static BigInteger Reduced(BigInteger set, BigInteger[] given)
    {
        for (var rest = set; !rest.IsZero; rest &= rest - 1)
        {
            var without = set & ~(rest & -rest);
            set = Array.TrueForAll(given, g => !(g & without).IsZero) ? without : set;
        }

        return set;
    }

    private static int Size(BigInteger set) => (int)BigInteger.PopCount(set);

    private static int[] Members(BigInteger set, int capacity) => [.. Enumerable.Range(0, capacity).Where(i => !(set >> i).IsEven)];
}
