using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

public sealed partial class InferenceEngine
{
    /// <summary>As the public method of this name, under other priors.</summary>
    internal double LogProbability(Evidence evidence, ReadOnlySpan<double> priors)
    {
        var work = Rent();
        try
        {
            return Enter(work, evidence, priors, PlanFor(work, evidence, priors, []));
        }
        finally
        {
            Return(work);
        }
    }

    internal InferenceEstimate Estimate(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> nodes)
    {
        var work = Rent();
        try
        {
            return FindPlan(work, evidence, priors, nodes, Asking.Posterior).Estimate;
        }
        finally
        {
            Return(work);
        }
    }

    /// <summary>Posteriors of <paramref name="nodes"/>, written where the network's offsets say; all 0 if the evidence is impossible.</summary>
    /// <returns>Natural logarithm of the probability of the evidence.</returns>
    internal double Infer(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> nodes, Span<double> values)
        => Infer(evidence, priors, nodes, nodes, Asking.Posterior, values);

    /// <summary>The same for roots: they need no place in the plan, so all questions about roots share one.</summary>
    internal double InferRoots(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, Span<double> values)
        => Infer(evidence, priors, [], roots, Asking.Posterior, values);

    /// <summary>The same again, with one plan for whatever grade <paramref name="open"/> are observed at.</summary>
    internal double InferRoots(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, ReadOnlySpan<int> open, Span<double> values)
        => Infer(evidence, priors, open, roots, Asking.AnyOutcome, values);

    private double Infer(
        Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> planned, ReadOnlySpan<int> read, Asking asking, Span<double> values)
    {
        var work = Rent();
        try
        {
            var plan = PlanFor(work, evidence, priors, planned, asking);
            var log = Calibrate(work, evidence, priors, plan);
            foreach (var node in read)
            {
                var posterior = values.Slice(Network.Offsets[node], Network.Nodes[node].Grades);
                posterior.Clear();
                if (!double.IsNegativeInfinity(log))
                {
                    Read(work, plan, evidence, priors, node, posterior);
                }
            }

            return log;
        }
        finally
        {
            Return(work);
        }
    }

    private double Joint(Evidence evidence, int first, int second, double[] cells)
    {
        var work = Rent();
        try
        {
            var plan = PlanFor(work, evidence, Network.Priors, [first, second]);
            var log = Calibrate(work, evidence, Network.Priors, plan);
            if (!double.IsNegativeInfinity(log))
            {
                FillJoint(work, plan, evidence, first, second, cells);
            }

            return log;
        }
        finally
        {
            Return(work);
        }
    }

    /// <summary>P(first, second | e) = P(first | e) P(second | first, e), with one more pass per grade of the first.</summary>
    private void FillJoint(Workspace work, Plan plan, Evidence evidence, int first, int second, double[] cells)
    {
        var columns = Network.Nodes[second].Grades;
        work.KeepLocals(plan);
        for (var grade = 0; grade < Network.Nodes[first].Grades; grade++)
        {
            var probability = Vary(work, plan, evidence, first, grade);
            var row = cells.AsSpan(grade * columns, columns);
            if (probability > 0)
            {
                Read(work, plan, evidence, Network.Priors, second, row);
            }

            foreach (ref var cell in row)
            {
                cell *= probability;
            }
        }
    }

    private MostProbableExplanation MostProbable(Evidence evidence, ReadOnlySpan<int> nodes, double total)
    {
        var work = Rent();
        try
        {
            var plan = PlanFor(work, evidence, Network.Priors, nodes, Asking.MostProbable);
            var log = Enter(work, evidence, Network.Priors, plan);
            var choice = Maximisation.TraceBack(plan, work);
            var grades = new Dictionary<int, int>();
            foreach (var node in nodes)
            {
                grades[node] = plan.VariableOf[node] is >= 0 and var variable ? choice[variable] : work.FixedGrades[node];
            }

            return new MostProbableExplanation(grades, log - total, total);
        }
        finally
        {
            Return(work);
        }
    }

    /// <summary>Loads the evidence and passes messages forward.</summary>
    private double Enter(Workspace work, Evidence evidence, ReadOnlySpan<double> priors, Plan plan)
    {
        work.Fit(plan);
        var loading = new EvidenceLoading(Network, plan, work, evidence, priors);
        if (!loading.Load(out var scale))
        {
            return double.NegativeInfinity;
        }

        for (var node = 0; node < Network.Count; node++)
        {
            scale += evidence.StateOf(node).LogScale;
        }

        work.BaseLog = Propagation.Forward(plan, work);
        return work.BaseLog + scale;
    }

    /// <summary>Loads the evidence and passes messages forward and backward.</summary>
    private double Calibrate(Workspace work, Evidence evidence, ReadOnlySpan<double> priors, Plan plan)
    {
        var log = Enter(work, evidence, priors, plan);
        if (!double.IsNegativeInfinity(log))
        {
            Propagation.Backward(plan, work);
        }

        return log;
    }

    /// <summary>Posterior of a node from calibrated tables. A root outside the plan is as its prior and its own likelihoods say.</summary>
    private void Read(Workspace work, Plan plan, Evidence evidence, ReadOnlySpan<double> priors, int node, Span<double> posterior)
    {
        if (plan.VariableOf[node] is >= 0 and var variable)
        {
            var bucket = plan.Buckets[plan.BucketOf[variable]];
            Propagation.Marginal(bucket, work.Cells.AsSpan(bucket.CellOffset, bucket.CellCount), posterior);
        }
        else if (Network.Nodes[node].Kind == NodeKind.Root)
        {
            ReadAlone(evidence, priors, node, posterior);
        }
        else
        {
            posterior.Clear();
            posterior[evidence.StateOf(node).Grade] = 1;
        }
    }

    private void ReadAlone(Evidence evidence, ReadOnlySpan<double> priors, int node, Span<double> posterior)
    {
        priors.Slice(Network.Offsets[node], posterior.Length).CopyTo(posterior);
        if (evidence.StateOf(node).Kind == StateKind.None)
        {
            return;
        }

        var sum = 0.0;
        for (var grade = 0; grade < posterior.Length; grade++)
        {
            sum += posterior[grade] *= evidence.LikelihoodsOf(node)[grade];
        }

        foreach (ref var probability in posterior)
        {
            probability /= sum;
        }
    }
}
