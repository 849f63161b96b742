namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Weighs checks behind the same closed access together: the access is charged once for the best of them and what is worth doing after it.</summary>
internal sealed class Bundles(Board board)
{
    /// <summary>How many checks of a bundle are done in a row before the base policy takes over.</summary>
    private const int Longest = 3;

    /// <summary>Buffers of their own, out of the way of those of the lookahead.</summary>
    private const int FirstBuffer = 50;

    /// <summary>Improves the promise of the best first check of every bundle.</summary>
    internal void Rank(in Position at, Ranking ranking)
    {
        foreach (var group in board.Compiled.CheckGroups)
        {
            var first = Array.FindIndex(group, board.IsPlannable);
            if (first < 0 || !MayPay(at, group))
            {
                continue;
            }

            var (check, total) = Best(at, group, Longest);
            if (check >= 0)
            {
                ranking.Promise(check, total);
            }
        }
    }

    /// <summary>A bundle needs an access to open and two checks behind it.</summary>
    private bool MayPay(in Position at, int[] group)
    {
        var (count, opening) = (0, 0.0);
        foreach (var c in group)
        {
            if (board.IsPlannable(c))
            {
                at.State.AfterCheck(c, out var cost);
                opening = cost - board.Compiled.Checks[c].Cost;
                count++;
            }
        }

        return count > 1 && opening > 0;
    }

    /// <summary>The best check of the bundle to begin with, each answer followed by the best of the rest or by the base policy.</summary>
    private (int Check, double Total) Best(in Position at, int[] group, int left)
    {
        var (best, bestTotal) = (-1, double.PositiveInfinity);
        foreach (var c in group)
        {
            if (board.IsPlannable(c) && !board.Meter.IsExhausted)
            {
                var total = After(at, group, c, left, follow: false);
                (best, bestTotal) = total < bestTotal ? (c, total) : (best, bestTotal);
            }
        }

        return best >= 0 && left > 1 ? (best, After(at, group, best, left, follow: true)) : (best, bestTotal);
    }

    private double After(in Position at, int[] group, int check, int left, bool follow)
    {
        var opened = at.State.AfterCheck(check, out var cost);
        var outcomes = board.Compiled.Checks[check].Outcomes;
        var total = cost * at.Mass;
        for (var o = 0; o < outcomes.Length; o++)
        {
            var next = board.EnterOutcome(at, check, o, opened, FirstBuffer + left);
            var value = board.PolicyCost(next);
            if (follow && value > next.Floor)
            {
                value = Math.Min(value, Best(next, group, left - 1).Total);
            }

            total += value;
            board.LeaveOutcome(check, o);
        }

        return total;
    }
}
