using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>Brings the observations of one question, and the numbers of the network, into the cells of a tape.</summary>
internal ref struct TapeLoading(Network network, Tape tape, TapeMemory memory, Evidence evidence, ReadOnlySpan<double> priors)
{
    private readonly ReadOnlySpan<double> _priors = priors;
    private readonly LocalCells _locals = new(tape, memory);
    private LogProduct _constant = new();

    /// <summary>Fills the memory.</summary>
    /// <param name="scale">Natural logarithm of the factor taken out of the cells.</param>
    /// <returns>False if the evidence is impossible.</returns>
    public bool Load(out double scale)
    {
        _locals.Clear();
        LoadKnown();
        LoadVariables();
        LoadSplits();
        LoadLeaves();
        LoadTables();
        var possible = _locals.CopyAligned(out scale);
        scale += _constant.Log;
        for (var node = 0; node < network.Count; node++)
        {
            scale += evidence.StateOf(node).LogScale;
        }

        return possible && !double.IsNegativeInfinity(scale);
    }

    private void LoadKnown()
    {
        foreach (var node in tape.OutsideRoots)
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

        foreach (var node in tape.FixedNodes)
        {
            if (network.Nodes[node].Kind == NodeKind.Root)
            {
                var grade = RootSupport.OnlyGrade(network, node, evidence, _priors);
                memory.FixedGrades[node] = grade;
                _constant.Multiply(_priors[network.Offsets[node] + grade]);
                _constant.Multiply(evidence.StateOf(node).Kind == StateKind.None ? 1 : evidence.LikelihoodsOf(node)[grade]);
            }
            else
            {
                memory.FixedGrades[node] = evidence.StateOf(node).Grade;
            }
        }

        foreach (var node in tape.SplitNodes)
        {
            // Only a node known to be at its first grade may be split and yet have children; these see it as fixed.
            memory.FixedGrades[node] = 0;
            _constant.Multiply(network.Nodes[node].BackgroundAtMost[evidence.StateOf(node).Grade]);
        }
    }

    private readonly void LoadVariables()
    {
        for (var v = 0; v < tape.Variables.Length; v++)
        {
            var variable = tape.Variables[v];
            if (network.Nodes[variable.Node].Kind == NodeKind.Root)
            {
                _locals.Multiply(v, _priors.Slice(network.Offsets[variable.Node], variable.Count), 1);
            }

            if (variable.Form != Gathering.Reach && evidence.StateOf(variable.Node).Kind != StateKind.None)
            {
                LoadLikelihoods(v, variable);
            }
        }

        foreach (var number in tape.Alone)
        {
            LoadAlone(number);
        }
    }

    private readonly void LoadAlone(int variable)
    {
        var model = network.Nodes[tape.Variables[variable].Node];
        Span<double> latest = stackalloc double[model.Grades];
        latest.Clear();
        latest[0] = 1;
        Leaves.TakeInKnown(tape, memory, model, latest);
        _locals.Multiply(variable, latest, 1);
    }

    /// <summary>The likelihood of each run, or for a sum of "at most" the weight of each: how much likelier its run is than the next.</summary>
    private readonly void LoadLikelihoods(int number, VariableStates variable)
    {
        Span<double> likelihoods = stackalloc double[variable.Count];
        var all = evidence.LikelihoodsOf(variable.Node);
        for (var state = 0; state < likelihoods.Length; state++)
        {
            var next = variable.Form == Gathering.AtMost && state + 1 < likelihoods.Length ? all[variable.Runs[state + 1]] : 0;
            likelihoods[state] = all[variable.Runs[state]] - next;
        }

        _locals.Multiply(number, likelihoods, 1);
    }

    private void LoadSplits()
    {
        foreach (var (node, parent, variable) in tape.Splits)
        {
            var model = network.Nodes[node];
            var byGrade = model.AtMost[parent].AsSpan(evidence.StateOf(node).Grade);
            if (variable >= 0)
            {
                _locals.Multiply(variable, byGrade, model.Grades);
            }
            else
            {
                _constant.Multiply(byGrade[memory.FixedGrades[model.Parents[parent].Node] * model.Grades]);
            }
        }
    }

    private void LoadLeaves()
    {
        foreach (var leaf in tape.Unaries)
        {
            LoadUnary(leaf);
        }

        Span<double> alone = stackalloc double[1];
        foreach (var node in tape.Constants)
        {
            Leaves.LikelihoodByParent(network, tape, memory, node, -1, evidence.LikelihoodsOf(node), alone);
            _constant.Multiply(alone[0]);
        }
    }

    private readonly void LoadUnary(UnaryLeaf leaf)
    {
        Span<double> byGrade = stackalloc double[network.Nodes[leaf.Node].Parents[leaf.Parent].Grades];
        Leaves.LikelihoodByParent(network, tape, memory, leaf.Node, leaf.Parent, evidence.LikelihoodsOf(leaf.Node), byGrade);
        _locals.Multiply(leaf.Variable, byGrade, 1);
    }

    private readonly void LoadTables()
    {
        memory.Tables[tape.One] = 1;
        foreach (var table in tape.Tables)
        {
            var cells = memory.Tables.AsSpan(table.Cells.Offset, table.Cells.Count);
            if (table.Origin == ValueOrigin.Contribution)
            {
                LoadContribution(table, cells);
            }
            else
            {
                LoadTable(table, cells);
            }

            for (var i = table.Cells.FirstSum; i < table.Cells.EndSums; i += 3)
            {
                memory.Tables[tape.Sums[i]] = memory.Tables[tape.Sums[i + 1]] + memory.Tables[tape.Sums[i + 2]];
            }
        }
    }

    private readonly void LoadTable(TapeTable table, Span<double> cells)
    {
        var model = network.Nodes[table.Node];
        var dense = model.Dense();
        var start = Leaves.KnownPlace(network, tape, memory, table.Node, out _);
        for (var cell = 0; cell < cells.Length; cell++)
        {
            cells[cell] = dense[start + table.Places[cell]];
        }
    }

    private readonly void LoadContribution(TapeTable table, Span<double> cells)
    {
        var model = network.Nodes[table.Node];
        var child = tape.Variables[tape.VariableOf[table.Node]];
        Span<double> known = stackalloc double[model.Grades];
        Span<double> latest = stackalloc double[model.Grades];
        if (table.IsFirst)
        {
            known.Clear();
            known[0] = 1;
            Leaves.TakeInKnown(tape, memory, model, known);
        }

        for (var grade = 0; grade < model.Parents[table.Parent].Grades; grade++)
        {
            scoped ReadOnlySpan<double> byGrade = model.Masses[table.Parent].AsSpan(grade * model.Grades, model.Grades);
            if (table.IsFirst)
            {
                known.CopyTo(latest);
                Leaves.TakeIn(model, table.Parent, grade, latest);
                byGrade = latest;
            }

            for (var state = 0; state < child.Count; state++)
            {
                cells[(grade * table.Strides.Parent) + (state * table.Strides.Node)] = StateOf(child, state, byGrade);
            }
        }
    }

    /// <summary>Probability of a state of a node, from that of each of its grades.</summary>
    private readonly double StateOf(VariableStates variable, int state, ReadOnlySpan<double> grades)
    {
        var isLast = state + 1 == variable.Count;
        var (from, to) = variable.Form switch
        {
            Gathering.Reach when state == 0 => (0, memory.FixedGrades[variable.Node]),
            Gathering.Reach => (memory.FixedGrades[variable.Node], memory.FixedGrades[variable.Node] + 1),
            Gathering.AtMost => (0, isLast ? grades.Length : variable.Runs[state + 1]),
            _ => (variable.Runs[state], isLast ? grades.Length : variable.Runs[state + 1]),
        };
        var sum = 0.0;
        foreach (var probability in grades[from..to])
        {
            sum += probability;
        }

        return sum;
    }
}
