using System.Collections.Immutable;
using DiagRules.Model.Cases;

namespace DiagRules.Replay;

/// <summary>Finds the fewest observations of a case that by themselves leave no listed cause possible.</summary>
/// <param name="play">Plays observations from the start.</param>
/// <param name="observations">All of the case, which together leave none.</param>
internal sealed class ExclusionSearch(Func<IEnumerable<Observation>, Moment> play, ImmutableArray<Observation> observations)
{
    /// <summary>Up to this size every set is tried; beyond it one is thinned out, which may not find the very smallest.</summary>
    private const int LargestTried = 3;

    /// <summary>Whether something unlisted is all that is left.</summary>
    public static bool LeavesNone(Moment moment) => moment.Network.HasShares && !moment.Weighing.Confidences.ContainsAnyExcept(0);

    /// <summary>The set, in the order of the record; empty when the complaint alone leaves none.</summary>
    public ImmutableArray<Observation> Smallest()
    {
        for (var size = 0; size <= LargestTried; size++)
        {
            if (Subsets(size, 0).FirstOrDefault(set => LeavesNone(play(set))) is { IsDefault: false } found)
            {
                return found;
            }
        }

        return ThinnedOut();
    }

    private IEnumerable<ImmutableArray<Observation>> Subsets(int size, int first)
    {
        if (size == 0)
        {
            return [[]];
        }

        return Enumerable.Range(first, Math.Max(0, observations.Length - first))
            .SelectMany(index => Subsets(size - 1, index + 1).Select(rest => rest.Insert(0, observations[index])));
    }

    private ImmutableArray<Observation> ThinnedOut()
    {
        var set = observations;
        foreach (var observation in observations)
        {
            var without = set.Remove(observation);
            set = LeavesNone(play(without)) ? without : set;
        }

        return set;
    }
}
