namespace DiagRules.Reasoning.Planning;

/// <summary>Draws the tree by planning anew at every node, the likeliest first, exactly as a session would come by them.</summary>
internal sealed class PolicyTreeBuilder(PolicyLimits limits, PlanOptions options, CancellationToken cancellationToken)
{
    private readonly PriorityQueue<Draft, (double Unlikely, int Order)> _open = new();
    private int _count;

    internal PolicyNode Build(Situation situation)
    {
        var root = Plan(situation, 1, 1);
        while (_open.TryDequeue(out var draft, out _))
        {
            Expand(draft);
        }

        return root.ToNode();
    }

    private Draft Plan(Situation situation, double reached, int depth)
    {
        var plan = Planner.Plan(situation, options, cancellationToken);
        var draft = new Draft(situation, plan.Steps[0], reached, depth);
        if (plan.Steps[0].Kind != StepKind.Specialist)
        {
            _open.Enqueue(draft, (-reached, _count));
        }

        _count++;
        return draft;
    }

    private void Expand(Draft draft)
    {
        var futures = Futures(draft.Situation, draft.Step);
        draft.IsCut = futures.Count > 0 && (draft.Depth >= limits.Depth || draft.Reached < limits.Probability || _count + futures.Count > limits.Nodes);
        if (draft.IsCut)
        {
            return;
        }

        foreach (var (outcome, probability, situation) in futures)
        {
            draft.Branches.Add((outcome, probability, Plan(situation, draft.Reached * probability, draft.Depth + 1)));
        }
    }

    private static List<(int? Outcome, double Probability, Situation Next)> Futures(Situation situation, NextStep step)
    {
        if (step.Kind == StepKind.Check)
        {
            return [.. Progress.Forecast(situation, step.Index)
                .Select(f => ((int?)f.Outcome, f.Probability, Progress.AfterCheck(situation, step.Index, f.Outcome)))];
        }

        var inVain = 1 - situation.Repairs[step.Index].Cures.Sum(c => c.Probability * situation.Probabilities[c.Cause]);
        return inVain > 1e-12 ? [(null, inVain, Progress.AfterRepair(situation, step.Index))] : [];
    }

    private sealed class Draft(Situation situation, NextStep step, double reached, int depth)
    {
        internal Situation Situation => situation;

        internal NextStep Step => step;

        internal double Reached => reached;

        internal int Depth => depth;

        internal bool IsCut { get; set; }

        internal List<(int? Outcome, double Probability, Draft Next)> Branches { get; } = [];

        internal PolicyNode ToNode() => new()
        {
            Kind = step.Kind,
            Index = step.Index,
            Cost = step.Cost,
            Reached = reached,
            ExpectedCost = step.Total,
            Branches = [.. Branches.Select(b => new PolicyBranch(b.Outcome, b.Probability, b.Next.ToNode()))],
            IsCut = IsCut,
        };
    }
}
