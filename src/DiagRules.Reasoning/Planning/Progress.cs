using DiagRules.Reasoning.Planning.Search;

namespace DiagRules.Reasoning.Planning;

/// <summary>How a situation moves on when a step is done. Expects a situation without faults.</summary>
internal static class Progress
{
    internal static IReadOnlyList<OutcomeForecast> Forecast(Situation situation, int check)
    {
        RequireIndex(check, situation.Checks.Count, nameof(check));
        var outcomes = situation.Checks[check].Outcomes;
        var forecasts = new List<OutcomeForecast>(outcomes.Count);
        var joint = Joint(situation, check);
        var total = joint.Sum(row => row.Sum());
        for (var o = 0; o < outcomes.Count; o++)
        {
            var sum = joint[o].Sum();
            if (sum > 0)
            {
                double[] posterior = [.. joint[o].Select(w => w / sum)];
                forecasts.Add(new OutcomeForecast(o, sum / total, posterior[..^1], posterior[^1]));
            }
        }

        return forecasts;
    }

    internal static Situation AfterCheck(Situation situation, int check, int outcome)
    {
        RequireIndex(check, situation.Checks.Count, nameof(check));
        var plan = situation.Checks[check];
        RequireIndex(outcome, plan.Outcomes.Count, nameof(outcome));
        RequireOffered(plan.State, $"Check {check}", nameof(check));
        var belief = Forecast(situation, check).FirstOrDefault(f => f.Outcome == outcome)
            ?? throw new ArgumentException($"Answer {outcome} of check {check} has probability 0 here; an answer with a probability above 0 was expected.", nameof(outcome));
        var done = plan.Outcomes[outcome].MakesPointless.Append(check).ToHashSet();
        return situation with
        {
            Probabilities = belief.Probabilities,
            Unlisted = belief.Unlisted,
            Accesses = Opened(situation, plan.Needs),
            Checks = [.. situation.Checks.Select((c, i) => done.Contains(i) && c.State != StepState.Done ? c with { State = StepState.Done } : c)],
        };
    }

    internal static Situation AfterRepair(Situation situation, int repair)
    {
        RequireIndex(repair, situation.Repairs.Count, nameof(repair));
        var plan = situation.Repairs[repair];
        RequireOffered(plan.State, $"Repair {repair}", nameof(repair));
        if (!plan.After.All(c => situation.Checks[c].State == StepState.Done))
        {
            throw new ArgumentException($"Repair {repair} comes after checks {string.Join(", ", plan.After)}; do these first.", nameof(repair));
        }

        double[] left = [.. situation.Probabilities];
        foreach (var cure in plan.Cures)
        {
            left[cure.Cause] *= 1 - cure.Probability;
        }

        var sum = left.Sum() + situation.Unlisted;
        if (!(sum > 0))
        {
            throw new ArgumentException($"Repair {repair} cures every cause that is possible here, so it cannot be tried in vain.", nameof(repair));
        }

        return situation with
        {
            Probabilities = [.. left.Select(p => p / sum)],
            Unlisted = situation.Unlisted / sum,
            Accesses = Opened(situation, plan.Needs),
            Repairs = [.. situation.Repairs.Select((r, i) => i == repair ? r with { State = StepState.Done } : r)],
        };
    }

    /// <summary>Weight of each answer (row) with each hypothesis (column, something not listed last); likelihoods normalised.</summary>
    private static double[][] Joint(Situation situation, int check)
    {
        var outcomes = situation.Checks[check].Outcomes;
        double[] prior = [.. situation.Probabilities, situation.Unlisted];
        var joint = new double[outcomes.Count][];
        for (var o = 0; o < outcomes.Count; o++)
        {
            joint[o] = new double[prior.Length];
        }

        for (var h = 0; h < prior.Length; h++)
        {
            if (prior[h] > 0)
            {
                var sum = outcomes.Sum(o => Likelihood(o, h));
                for (var o = 0; o < outcomes.Count; o++)
                {
                    joint[o][h] = prior[h] * Likelihood(outcomes[o], h) / sum;
                }
            }
        }

        return joint;
    }

    private static double Likelihood(PlanOutcome outcome, int hypothesis) =>
        hypothesis < outcome.Likelihoods.Count ? outcome.Likelihoods[hypothesis] : outcome.Unlisted;

    private static IReadOnlyList<PlanAccess> Opened(Situation situation, IReadOnlyList<int> needs)
    {
        var open = Bits.Empty(situation.Accesses.Count);
        for (var i = 0; i < situation.Accesses.Count; i++)
        {
            open = situation.Accesses[i].IsOpen ? open.With(i) : open;
        }

        new AccessOpening(situation.Accesses).TryOpen(open, needs, out _, out var after);
        return [.. situation.Accesses.Select((a, i) => a.IsOpen == after.Contains(i) ? a : a with { IsOpen = after.Contains(i) })];
    }

    private static void RequireIndex(int index, int count, string parameter)
    {
        if (index < 0 || index >= count)
        {
            throw new ArgumentOutOfRangeException(parameter, index, $"There are {count}, counted from 0.");
        }
    }

    private static void RequireOffered(StepState state, string subject, string parameter)
    {
        if (state != StepState.Offered)
        {
            throw new ArgumentException($"{subject} is {(state == StepState.Done ? "done already" : "withheld")}; only an offered one can be done.", parameter);
        }
    }
}
