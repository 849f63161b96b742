using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

/// <summary>Finds the fewest observations whose absence makes the rest possible.</summary>
/// <remarks>
/// The answer depends on what was observed, not on the order. An observation that cannot be by itself always goes. If the rest cannot be together, sets of one,
/// two and three more are tried; of the smallest that help, the one that leaves the rest most probable is taken, and of equals the one with the smallest node
/// numbers. Where that would take more than <see cref="MostTrials"/> trials, observations are kept in the order of their nodes as long as they can be together.
/// </remarks>
internal sealed class ImpossibleObservations(Func<Evidence, double> logProbability)
{
    private const int MostTrials = 3000;
    private const int LargestSet = 3;

    private int _trials;

    /// <summary>Nodes to leave out, ascending.</summary>
    public int[] Find(Evidence evidence)
    {
        int[] observed = [.. evidence.Observed];
        int[] alone = [.. observed.Where(node => !IsPossible(Only(evidence, [node])))];
        int[] rest = [.. observed.Except(alone)];
        var remaining = Only(evidence, rest);
        if (IsPossible(remaining))
        {
            return alone;
        }

        for (var size = 1; size <= Math.Min(LargestSet, rest.Length); size++)
        {
            if (BestOfSize(remaining, rest, size) is { } set)
            {
                return [.. alone.Concat(set).Order()];
            }
        }

        return [.. alone.Concat(OneAfterTheOther(remaining, rest)).Order()];
    }

    private bool IsPossible(Evidence evidence) => !double.IsNegativeInfinity(logProbability(evidence));

    private static Evidence Only(Evidence evidence, ReadOnlySpan<int> nodes)
    {
        var only = new Evidence(evidence.Network);
        foreach (var node in nodes)
        {
            only.CopyFrom(evidence, node);
        }

        return only;
    }

    private int[]? BestOfSize(Evidence evidence, int[] nodes, int size)
    {
        int[]? best = null;
        var bestLog = double.NegativeInfinity;
        foreach (var set in Subsets(nodes, size, 0))
        {
            if (_trials++ > MostTrials)
            {
                break;
            }

            var without = evidence.Copy();
            Array.ForEach(set, without.Withdraw);
            var log = logProbability(without);
            if (log > bestLog)
            {
                (best, bestLog) = (set, log);
            }
        }

        return best;
    }

    /// <summary>Subsets in the order of their node numbers.</summary>
    private static IEnumerable<int[]> Subsets(int[] nodes, int size, int first)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }

        for (var i = first; i <= nodes.Length - size; i++)
        {
            foreach (var rest in Subsets(nodes, size - 1, i + 1))
            {
                yield return [nodes[i], .. rest];
            }
        }
    }

    private List<int> OneAfterTheOther(Evidence evidence, int[] nodes)
    {
        var kept = new Evidence(evidence.Network);
        var dropped = new List<int>();
        foreach (var node in nodes)
        {
            kept.CopyFrom(evidence, node);
            if (!IsPossible(kept))
            {
                kept.Withdraw(node);
                dropped.Add(node);
            }
        }

        return dropped;
    }
}
