namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>Brings the observations of one question into a plan's tables.</summary>
/// <remarks>
/// Likelihoods of one variable are multiplied with an exponent of their own per grade, so that hundreds of observations neither underflow nor lose one grade
/// against another.
/// </remarks>
internal ref struct EvidenceLoading(Network network, Plan plan, Workspace work, Evidence evidence, ReadOnlySpan<double> priors)
{
    /// <summary>Powers of two are taken out in steps of this many.</summary>
    private const int Step = 256;

    private static readonly double Small = Math.ScaleB(1, -Step);
    private static readonly double Large = Math.ScaleB(1, Step);

    private readonly ReadOnlySpan<double> _priors = priors;
    private LogProduct _constant = new();
    private int _exponent;

    /// <summary>Fills the workspace.</summary>
    /// <param name="scale">Natural logarithm of the factor taken out of the tables.</param>
    /// <returns>False if the evidence is impossible.</returns>
    public bool Load(out double scale)
    {
        var locals = plan.LocalOffsets[^1];
        work.Locals.AsSpan(0, locals).Fill(1);
        work.LocalExponents.AsSpan(0, locals).Clear();
        LoadOutside();
        LoadFixed();
        LoadVariables();
        LoadSplits();
        LoadTables();
        var possible = AlignExponents();
        scale = _constant.Log - (_exponent * Step * Math.Log(2));
        return possible && !double.IsNegativeInfinity(scale);
    }

    private void LoadOutside()
    {
        foreach (var node in plan.OutsideRoots)
        {
            if (evidence.StateOf(node).Kind != StateKind.None)
            {
                var sum = 0.0;
                for (var grade = 0; grade < network.Nodes[node].Grades; grade++)
                {
                    sum += _priors[network.Offsets[node] + grade] * evidence.LikelihoodsOf(node)[grade];
                }

                _constant.Multiply(sum);
            }
        }
    }

    private void LoadFixed()
    {
        foreach (var node in plan.FixedNodes)
        {
            if (network.Nodes[node].Kind == NodeKind.Root)
            {
                var grade = RootSupport.OnlyGrade(network, node, evidence, _priors);
                work.FixedGrades[node] = grade;
                _constant.Multiply(_priors[network.Offsets[node] + grade]);
                _constant.Multiply(LikelihoodOf(node, grade));
            }
            else
            {
                work.FixedGrades[node] = evidence.StateOf(node).Grade;
            }
        }
    }

    private readonly double LikelihoodOf(int node, int grade) => evidence.StateOf(node).Kind == StateKind.None ? 1 : evidence.LikelihoodsOf(node)[grade];

    private readonly void LoadVariables()
    {
        foreach (var (variable, node) in plan.Roots)
        {
            Multiply(variable, _priors.Slice(network.Offsets[node], network.Nodes[node].Grades), 1);
            if (evidence.StateOf(node).Kind != StateKind.None)
            {
                Multiply(variable, evidence.LikelihoodsOf(node), 1);
            }
        }

        foreach (var (variable, node) in plan.Softs)
        {
            if (evidence.StateOf(node).Kind != StateKind.None)
            {
                Multiply(variable, evidence.LikelihoodsOf(node), 1);
            }
        }
    }

    private void LoadSplits()
    {
        foreach (var node in plan.SplitNodes)
        {
            // Only a node known to be at its first grade may be split and yet have children; these see it as fixed.
            work.FixedGrades[node] = 0;
            _constant.Multiply(network.Nodes[node].BackgroundAtMost[evidence.StateOf(node).Grade]);
        }

        foreach (var (node, parent, variable) in plan.Splits)
        {
            var model = network.Nodes[node];
            var byGrade = model.AtMost[parent].AsSpan(evidence.StateOf(node).Grade);
            if (variable >= 0)
            {
                Multiply(variable, byGrade, model.Grades);
            }
            else
            {
                _constant.Multiply(byGrade[work.FixedGrades[model.Parents[parent].Node] * model.Grades]);
            }
        }
    }

    private void LoadTables()
    {
        for (var f = 0; f < plan.Factors.Length; f++)
        {
            var factor = plan.Factors[f];
            work.Tables[f] = factor.Table(network.Nodes[factor.Node], work.FixedGrades[factor.Node]);
            work.Bases[f] = BaseOf(factor);
        }

        foreach (var factor in plan.Unaries)
        {
            var table = factor.Table(network.Nodes[factor.Node], work.FixedGrades[factor.Node]);
            Multiply(factor.Free[0].Id, table.AsSpan(BaseOf(factor)), factor.Free[0].Stride);
        }

        foreach (var factor in plan.Constants)
        {
            _constant.Multiply(factor.Table(network.Nodes[factor.Node], work.FixedGrades[factor.Node])[BaseOf(factor)]);
        }
    }

    private readonly int BaseOf(Factor factor)
    {
        var start = factor.Base;
        foreach (var axis in factor.Fixed)
        {
            // A reach table is already made for the grade that was seen.
            start += work.FixedGrades[axis.Id] * axis.Stride;
        }

        return start;
    }

    private readonly void Multiply(int variable, ReadOnlySpan<double> values, int stride)
    {
        var first = plan.LocalOffsets[variable];
        for (var i = first; i < plan.LocalOffsets[variable + 1]; i++)
        {
            var product = work.Locals[i] * values[(i - first) * stride];
            if (product < Small && product > 0)
            {
                product *= Large;
                work.LocalExponents[i]++;
            }

            work.Locals[i] = product;
        }
    }

    /// <summary>Gives all grades of a variable one exponent, the one that keeps the likeliest grade in range.</summary>
    private bool AlignExponents()
    {
        for (var v = 0; v + 1 < plan.LocalOffsets.Length; v++)
        {
            var smallest = int.MaxValue;
            for (var i = plan.LocalOffsets[v]; i < plan.LocalOffsets[v + 1]; i++)
            {
                smallest = work.Locals[i] > 0 ? Math.Min(smallest, work.LocalExponents[i]) : smallest;
            }

            if (smallest == int.MaxValue)
            {
                return false;
            }

            if (smallest > 0 || work.LocalExponents.AsSpan(plan.LocalOffsets[v]..plan.LocalOffsets[v + 1]).ContainsAnyExcept(0))
            {
                Align(v, smallest);
            }
        }

        return true;
    }

    private void Align(int variable, int exponent)
    {
        _exponent += exponent;
        for (var i = plan.LocalOffsets[variable]; i < plan.LocalOffsets[variable + 1]; i++)
        {
            work.Locals[i] = Math.ScaleB(work.Locals[i], (exponent - work.LocalExponents[i]) * Step);
        }
    }
}
