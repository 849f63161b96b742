using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>A leaf that bears on one variable only.</summary>
/// <param name="Node">The leaf.</param>
/// <param name="Parent">Which of its parents is that variable, counted from 0.</param>
/// <param name="Variable">Number of the variable.</param>
internal readonly record struct UnaryLeaf(int Node, int Parent, int Variable);

/// <summary>The variables of a question, and the tables its network consists of, before anything is joined.</summary>
internal sealed class TapeDraft
{
    private readonly Network _network;
    private readonly TapeRequest _request;

    public TapeDraft(Network network, TapeRequest request)
    {
        _network = network;
        _request = request;
        Relevant = RelevantNodes();
        VariableOf = new TapeVariable?[network.Count];
        for (var node = 0; node < network.Count; node++)
        {
            if (Relevant[node])
            {
                AddVariableFor(node);
            }
        }

        Words = (Variables.Count + 63) / 64;
        for (var node = 0; node < network.Count; node++)
        {
            if (Relevant[node])
            {
                AddValuesFor(node);
            }
        }
    }

    public bool[] Relevant { get; }

    public TapeVariable?[] VariableOf { get; }

    public List<TapeVariable> Variables { get; } = [];

    /// <summary>Words that a set of variables takes.</summary>
    public int Words { get; }

    public List<TapeValue> Values { get; } = [];

    public List<SplitTerm> Splits { get; } = [];

    public List<int> SplitNodes { get; } = [];

    public List<UnaryLeaf> Unaries { get; } = [];

    /// <summary>Observed nodes all of whose parents are known for certain.</summary>
    public List<int> Constants { get; } = [];

    /// <summary>Variables all of whose parents are known for certain.</summary>
    public List<TapeVariable> Alone { get; } = [];

    /// <summary>A node bears on the answer if something is known of it, it was asked for, or such a node lies below it. The rest is barren.</summary>
    private bool[] RelevantNodes()
    {
        var relevant = new bool[_network.Count];
        for (var node = _network.Count - 1; node >= 0; node--)
        {
            relevant[node] |= _request.RoleOf(node) != NodeRole.Free;
            if (relevant[node])
            {
                foreach (var parent in _network.Nodes[node].Parents)
                {
                    relevant[parent.Node] = true;
                }
            }
        }

        return relevant;
    }

    private void AddVariableFor(int node)
    {
        var model = _network.Nodes[node];
        var role = _request.RoleOf(node);
        if (role is NodeRole.Free or NodeRole.Open)
        {
            Add(node, model.Kind == NodeKind.Graded ? Gathering.Latest : Gathering.None, [.. Enumerable.Range(0, model.Grades)]);
        }
        else if (role != NodeRole.Split && model.Kind == NodeKind.Graded && VariableParents(model) >= 2)
        {
            var form = role switch { NodeRole.Fixed => Gathering.Reach, NodeRole.Falling => Gathering.AtMost, _ => Gathering.Latest };
            Add(node, form, form == Gathering.Reach ? [0, 1] : _request.RunsOf(node));
        }
    }

    private void Add(int node, Gathering form, int[] runs)
    {
        var isByGrade = form is Gathering.None or Gathering.Latest && runs.Length == _network.Nodes[node].Grades;
        var variable = new TapeVariable(Variables.Count, new VariableStates(node, form, runs, isByGrade));
        foreach (var parent in _network.Nodes[node].Parents)
        {
            if (ReadableOf(parent.Node) is { } above)
            {
                variable.Parents.Add(above);
                above.Children.Add(variable);
            }
        }

        variable.IsGathering = form is Gathering.Latest or Gathering.Reach && variable.Parents.Count > 1;
        Variables.Add(variable);
        VariableOf[node] = variable;
    }

    /// <summary>The variable a child sees: none if the grade is known.</summary>
    private TapeVariable? ReadableOf(int node) => _request.RoleOf(node) is NodeRole.Free or NodeRole.Open ? VariableOf[node] : null;

    private int VariableParents(NodeModel model)
    {
        var count = 0;
        foreach (var parent in model.Parents)
        {
            count += ReadableOf(parent.Node) is null ? 0 : 1;
        }

        return count;
    }

    private void AddValuesFor(int node)
    {
        var model = _network.Nodes[node];
        var variable = VariableOf[node];
        if (variable is not null && variable.Form != Gathering.Reach)
        {
            Keep(new TapeValue(ValueOrigin.Local, [variable], Words));
        }

        if (_request.RoleOf(node) == NodeRole.Split)
        {
            SplitNodes.Add(node);
            Splits.AddRange(model.Parents.Select((parent, k) => new SplitTerm(node, k, ReadableOf(parent.Node)?.Number ?? -1)));
        }
        else if (model.Kind == NodeKind.Table)
        {
            AddTable(node, model, variable);
        }
        else if (model.Kind == NodeKind.Graded)
        {
            AddContributions(node, model, variable);
        }
    }

    private void AddTable(int node, NodeModel model, TapeVariable? variable)
    {
        TapeVariable[] axes = [.. model.Parents.Select(parent => ReadableOf(parent.Node)).Append(variable).OfType<TapeVariable>()];
        if (axes.Length == 0)
        {
            Constants.Add(node);
        }
        else if (axes.Length == 1 && variable is null)
        {
            Unaries.Add(new UnaryLeaf(node, Array.FindIndex(model.Parents, parent => ReadableOf(parent.Node) is not null), axes[0].Number));
        }
        else
        {
            Keep(new TapeValue(ValueOrigin.Table, axes, Words) { Node = node });
        }
    }

    private void AddContributions(int node, NodeModel model, TapeVariable? variable)
    {
        var isFirst = true;
        for (var k = 0; k < model.Parents.Length; k++)
        {
            if (ReadableOf(model.Parents[k].Node) is not { } parent)
            {
                continue;
            }

            if (variable is null)
            {
                Unaries.Add(new UnaryLeaf(node, k, parent.Number));
            }
            else
            {
                var value = new TapeValue(ValueOrigin.Contribution, [parent, variable], Words) { Node = node, Parent = k, IsFirst = isFirst };
                value.SetPartial(variable, variable.IsGathering);
                Keep(value);
            }

            isFirst = false;
        }

        if (isFirst && variable is null)
        {
            Constants.Add(node);
        }
        else if (isFirst)
        {
            Alone.Add(variable!);
        }
    }

    private void Keep(TapeValue value)
    {
        Values.Add(value);
        foreach (var axis in value.Axes)
        {
            axis.Uses.Add(value);
        }
    }
}
