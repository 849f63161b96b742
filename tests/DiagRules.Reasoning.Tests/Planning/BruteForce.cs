using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

/// <summary>
/// The least expected cost by plain recursion on normalised probabilities, written apart from the library: every order of every step, no bounds.
/// Positions are remembered by what was answered, tried and opened, or this would take for ever.
/// </summary>
internal sealed class BruteForce(Situation situation)
{
    private readonly Dictionary<string, double> _known = [];

    internal static double LeastCost(Situation situation) => new BruteForce(situation).LeastCost();

    internal double LeastCost()
    {
        var answers = situation.Checks.Select(c => c.State switch { StepState.Offered => Free, StepState.Done => Over, _ => Held }).ToArray();
        var tried = situation.Repairs.Select(r => r.State != StepState.Offered).ToArray();
        return Solve([.. situation.Probabilities, situation.Unlisted], Open, answers, tried);
    }

    /// <summary>What the best plan costs that begins with this step.</summary>
    internal double Total(StepKind kind, int index)
    {
        var answers = situation.Checks.Select(c => c.State switch { StepState.Offered => Free, StepState.Done => Over, _ => Held }).ToArray();
        var tried = situation.Repairs.Select(r => r.State != StepState.Offered).ToArray();
        double[] belief = [.. situation.Probabilities, situation.Unlisted];
        return kind switch
        {
            StepKind.Check => CheckFirst(belief, Open, answers, tried, index),
            StepKind.Repair => RepairFirst(belief, Open, answers, tried, index),
            _ => situation.SpecialistCost,
        };
    }

    private const int Free = -1;
    private const int Held = -2;
    private const int Over = -3;

    private bool[] Open => [.. situation.Accesses.Select(a => a.IsOpen)];

    private double Solve(double[] belief, bool[] open, int[] answers, bool[] tried)
    {
        var key = string.Join(',', answers) + '|' + string.Join(',', tried) + '|' + string.Join(',', open);
        if (!_known.TryGetValue(key, out var least))
        {
            least = situation.SpecialistCost;
            for (var c = 0; c < answers.Length; c++)
            {
                least = answers[c] == Free ? Math.Min(least, CheckFirst(belief, open, answers, tried, c)) : least;
            }

            for (var r = 0; r < tried.Length; r++)
            {
                var ready = !tried[r] && situation.Repairs[r].After.All(c => answers[c] is not (Free or Held));
                least = ready ? Math.Min(least, RepairFirst(belief, open, answers, tried, r)) : least;
            }

            _known.Add(key, least);
        }

        return least;
    }

    private double CheckFirst(double[] belief, bool[] open, int[] answers, bool[] tried, int c)
    {
        var check = situation.Checks[c];
        var (cost, after) = Opening(open, check.Needs);
        cost += check.Cost;
        for (var o = 0; o < check.Outcomes.Count; o++)
        {
            double[] joint = [.. belief.Select((p, h) => p * (h < situation.Probabilities.Count ? check.Outcomes[o].Likelihoods[h] : check.Outcomes[o].Unlisted))];
            var probability = joint.Sum();
            if (probability > 0)
            {
                var next = answers.ToArray();
                next[c] = o;
                foreach (var pointless in check.Outcomes[o].MakesPointless.Where(p => next[p] is Free or Held))
                {
                    next[pointless] = Over;
                }

                cost += probability * Solve([.. joint.Select(p => p / probability)], after, next, tried);
            }
        }

        return cost;
    }

    private double RepairFirst(double[] belief, bool[] open, int[] answers, bool[] tried, int r)
    {
        var repair = situation.Repairs[r];
        var (cost, after) = Opening(open, repair.Needs);
        var left = belief.ToArray();
        foreach (var cure in repair.Cures)
        {
            left[cure.Cause] *= 1 - cure.Probability;
        }

        var failing = left.Sum();
        var next = tried.ToArray();
        next[r] = true;
        return cost + repair.Cost + (failing > 0 ? failing * Solve([.. left.Select(p => p / failing)], after, answers, next) : 0);
    }

    /// <summary>Tries every sequence of openings that never comes back to where it was.</summary>
    private (double Cost, bool[] Open) Opening(bool[] open, IReadOnlyList<int> needs)
    {
        var useful = new HashSet<int>();
        void Mark(int access)
        {
            if (useful.Add(access))
            {
                situation.Accesses[access].Needs.ToList().ForEach(Mark);
            }
        }

        needs.ToList().ForEach(Mark);
        var best = (Cost: double.PositiveInfinity, Steps: 0, Left: 0, Code: 0L, Open: open);
        void Go(bool[] now, double cost, int steps, HashSet<long> path)
        {
            if (needs.All(n => now[n]))
            {
                var found = (cost, steps, now.Count(o => o), Code(now), now);
                best = (cost, steps, -found.Item3, -found.Item4).CompareTo((best.Cost, best.Steps, -best.Left, -best.Code)) < 0 ? found : best;
                return;
            }

            foreach (var access in useful.Where(a => !now[a] && situation.Accesses[a].Needs.All(n => now[n])))
            {
                bool[] next = [.. now.Select((o, i) => i == access || (o && !Exclude(i, access)))];
                if (path.Add(Code(next)))
                {
                    Go(next, cost + situation.Accesses[access].Cost, steps + 1, path);
                    path.Remove(Code(next));
                }
            }
        }

        Go(open, 0, 0, [Code(open)]);
        return (best.Cost, best.Open);
    }

    private bool Exclude(int one, int other) =>
        situation.Accesses[one].Excludes.Contains(other) || situation.Accesses[other].Excludes.Contains(one);

    private static long Code(bool[] open) => open.Select((o, i) => o ? 1L << i : 0).Sum();
}
