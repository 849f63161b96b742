namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>One question being answered: a plan, the memory it works in, the evidence and the priors.</summary>
internal readonly ref struct Question(Network network, Plan plan, Workspace work, Evidence evidence, ReadOnlySpan<double> priors)
{
    /// <summary>A difference of two probabilities below this is rounding, and stands for 0.</summary>
    private const double Rounding = 1e-13;

    private readonly ReadOnlySpan<double> _priors = priors;

    /// <summary>Loads the evidence and passes messages forward.</summary>
    /// <returns>Natural logarithm of the probability of the evidence.</returns>
    public double Enter()
    {
        work.Fit(plan);
        var loading = new EvidenceLoading(network, plan, work, evidence, _priors);
        if (!loading.Load(out var scale))
        {
            return double.NegativeInfinity;
        }

        for (var node = 0; node < network.Count; node++)
        {
            scale += evidence.StateOf(node).LogScale;
        }

        work.BaseLog = Propagation.Forward(plan, work);
        return work.BaseLog + scale;
    }

    /// <summary>Loads the evidence and passes messages forward and backward, so that posteriors can be read.</summary>
    /// <returns>Natural logarithm of the probability of the evidence; there are no posteriors if it is negative infinity.</returns>
    public double Calibrate()
    {
        var log = Enter();
        if (!double.IsNegativeInfinity(log))
        {
            Propagation.Backward(plan, work);
        }

        return log;
    }

    /// <summary>The most probable grade of a node, after <see cref="Enter"/> with a plan that maximises over it.</summary>
    public int ChoiceOf(int node, int[] choices) => plan.VariableOf[node] is >= 0 and var variable ? choices[variable] : work.FixedGrades[node];

    /// <summary>Whether a node has no variable and is not known either, so that it can only be entered as "at most g".</summary>
    public bool IsCumulative(int node)
        => plan.VariableOf[node] < 0 && network.Nodes[node].Kind != NodeKind.Root && !evidence.StateOf(node).IsCertain;

    /// <summary>Posterior of a node that is not <see cref="IsCumulative"/>.</summary>
    public void Read(int node, Span<double> posterior)
    {
        if (plan.VariableOf[node] is >= 0 and var variable)
        {
            var bucket = plan.Buckets[plan.BucketOf[variable]];
            Propagation.Marginal(work.Cells.AsSpan(bucket.CellOffset, bucket.CellCount), posterior);
        }
        else if (network.Nodes[node].Kind == NodeKind.Root)
        {
            RootSupport.ReadAlone(network, node, evidence, _priors, posterior);
        }
        else
        {
            posterior.Clear();
            posterior[evidence.StateOf(node).Grade] = 1;
        }
    }

    /// <summary>Probability that each root has its second grade, times <paramref name="factor"/>; and, last, the factor.</summary>
    public void ReadPresent(ReadOnlySpan<int> roots, Span<double> present, double factor)
    {
        present.Clear();
        Span<double> posterior = stackalloc double[2];
        for (var i = 0; i < roots.Length && factor > 0; i++)
        {
            Read(roots[i], posterior);
            present[i] = posterior[1] * factor;
        }

        present[^1] = factor;
    }

    /// <summary>Remembers the evidence as it is, for <see cref="Vary"/>.</summary>
    public void KeepEvidence() => work.KeepLocals(plan);

    /// <summary>Enters one grade of a node, or "at most" it, on top of the evidence that was kept, and passes messages again.</summary>
    /// <returns>How much less probable that makes the evidence, 0..1; there are no posteriors if it is 0.</returns>
    public double Vary(int node, int grade)
    {
        work.RestoreLocals(plan);
        var constant = 1.0;
        if (plan.VariableOf[node] is >= 0 and var variable)
        {
            work.Restrict(plan, variable, grade);
        }
        else if (IsCumulative(node))
        {
            constant = LimitParents(node, grade);
        }
        else
        {
            constant = grade == KnownGradeOf(node) ? 1 : 0;
        }

        var log = constant > 0 ? Propagation.Forward(plan, work) : double.NegativeInfinity;
        if (double.IsNegativeInfinity(log))
        {
            return 0;
        }

        Propagation.Backward(plan, work);
        return constant * Math.Exp(log - work.BaseLog);
    }

    /// <summary>Turns probabilities of "at most g", row after row, into those of "g".</summary>
    public static void ToDifferences(Span<double> rows, int grades)
    {
        for (var i = rows.Length - 1; i > 0; i--)
        {
            if (i % grades > 0)
            {
                var difference = rows[i] - rows[i - 1];
                rows[i] = difference < Rounding ? 0 : difference;
            }
        }
    }

    /// <summary>A root is known by the plan, another node by its observation.</summary>
    private int KnownGradeOf(int node) => network.Nodes[node].Kind == NodeKind.Root ? work.FixedGrades[node] : evidence.StateOf(node).Grade;

    /// <summary>Multiplies in P(node at most grade | parents), one factor per parent.</summary>
    /// <returns>The part that does not depend on variables.</returns>
    private double LimitParents(int node, int grade)
    {
        var model = network.Nodes[node];
        var constant = model.BackgroundAtMost[grade];
        for (var k = 0; k < model.Parents.Length; k++)
        {
            var atMost = model.AtMost[k].AsSpan(grade);
            var parent = model.Parents[k].Node;
            if (plan.VariableOf[parent] is >= 0 and var variable)
            {
                work.MultiplyLocal(plan, variable, atMost, model.Grades);
            }
            else
            {
                constant *= atMost[work.FixedGrades[parent] * model.Grades];
            }
        }

        return constant;
    }
}
