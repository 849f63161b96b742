namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// Follows a plan from somewhere else: answers that are known by now decide its branches for nothing, checks that have become pointless are passed
/// over, repairs that were in vain are left out, and every access is priced as it stands.
/// </summary>
internal sealed class PlanReuse(Board board, PlanPool pool, RepairEndings endings)
{
    /// <summary>Below this mass the rest of a plan is not fitted; the best plan that is at hand takes its place.</summary>
    internal const double Negligible = 1e-4;

    private double _negligible;

    /// <summary>The plan fitted to a position, if it costs less there than a limit; else null.</summary>
    /// <param name="plan">A plan made anywhere in the same situation.</param>
    /// <param name="at">Where it is to be followed.</param>
    /// <param name="depth">The depth of the position.</param>
    /// <param name="value">The expected cost of the fitted plan on the weights of the position, or the limit.</param>
    internal PlanVector? Fit(PlanVector plan, in Position at, int depth, ref double value)
    {
        // Most plans that are fitted turn out not to be better than what is there, and are not worth the making.
        if (Cost(plan, at, depth, Negligible) >= value)
        {
            return null;
        }

        var cost = Fit(plan, at, depth, isWanted: true, out var fitted);
        if (cost >= value)
        {
            return null;
        }

        value = cost;
        return fitted;
    }

    /// <summary>What a plan costs once it is fitted to a position.</summary>
    /// <param name="plan">A plan made anywhere in the same situation.</param>
    /// <param name="at">Where it is to be followed.</param>
    /// <param name="depth">The depth of the position.</param>
    /// <param name="negligible">Below this mass the rest of the plan counts with what it costs as it stands.</param>
    internal double Cost(PlanVector plan, in Position at, int depth, double negligible)
    {
        _negligible = negligible;
        return Fit(plan, at, depth, isWanted: false, out _);
    }

    private double Fit(PlanVector plan, in Position at, int depth, bool isWanted, out PlanVector? fitted)
    {
        board.Meter.Spend(5 + (board.Compiled.Width / 16));
        if (at.Mass <= 0)
        {
            fitted = endings.None(at.State);
            return 0;
        }

        if (board.CanFollow(plan, at.State))
        {
            fitted = plan;
            return Weights.Dot(at.Weights, plan.Costs);
        }

        if (at.Mass < _negligible)
        {
            fitted = isWanted ? pool.Best(at, out _) : null;
            if (!isWanted || fitted is not null)
            {
                return isWanted ? Weights.Dot(at.Weights, fitted!.Costs) : Weights.Dot(at.Weights, plan.Costs);
            }
        }

        if (plan.Step == PlanVector.Ending)
        {
            return End(plan, at, isWanted, out fitted);
        }

        return plan.Step < 0 ? FitRepair(plan, at, depth, isWanted, out fitted) : FitCheck(plan, at, depth, isWanted, out fitted);
    }

    private double End(PlanVector plan, in Position at, bool isWanted, out PlanVector? fitted)
    {
        fitted = endings.Rest(plan, at, isWanted, out var value);
        if (pool.Best(at, out var ready) is { } other && ready < value)
        {
            (fitted, value) = (other, ready);
        }

        return value;
    }

    private double FitRepair(PlanVector plan, in Position at, int depth, bool isWanted, out PlanVector? fitted)
    {
        var repair = ~plan.Step;
        if (board.Tried[repair] || double.IsPositiveInfinity(at.State.RepairCosts[repair]))
        {
            return Fit(plan.Next[0], at, depth, isWanted, out fitted);
        }

        var next = board.EnterRepair(at, repair, depth);
        var value = (at.State.RepairCosts[repair] * at.Mass) + Fit(plan.Next[0], next, depth + 1, isWanted, out var then);
        board.LeaveRepair(repair);
        fitted = isWanted ? PlanVector.AfterRepair(board.Compiled, at.State, repair, then!) : null;
        return value;
    }

    private double FitCheck(PlanVector plan, in Position at, int depth, bool isWanted, out PlanVector? fitted)
    {
        var check = plan.Step;
        if (board.Closed[check] > 0)
        {
            var answer = board.Answers[check];
            return Fit(plan.Next[answer >= 0 ? answer : Likeliest(at, check)], at, depth, isWanted, out fitted);
        }

        var opened = at.State.AfterCheck(check, out var cost);
        var then = isWanted ? new PlanVector[plan.Next.Length] : [];
        var value = cost * at.Mass;
        for (var o = 0; o < plan.Next.Length; o++)
        {
            var next = board.EnterOutcome(at, check, o, opened, depth);
            value += Fit(plan.Next[o], next, depth + 1, isWanted, out var part);
            board.LeaveOutcome(check, o);
            if (isWanted)
            {
                then[o] = part!;
            }
        }

        fitted = isWanted ? PlanVector.AfterCheck(board.Compiled, at.State, check, then) : null;
        return value;
    }

    /// <summary>The answer that a check would most probably give, were it not pointless.</summary>
    private int Likeliest(in Position at, int check)
    {
        var outcomes = board.Compiled.Checks[check].Outcomes;
        var (likeliest, most) = (0, -1.0);
        for (var o = 0; o < outcomes.Length; o++)
        {
            var mass = Weights.Dot(at.Weights, outcomes[o].Likelihood);
            (likeliest, most) = mass > most ? (o, mass) : (likeliest, most);
        }

        return likeliest;
    }
}
