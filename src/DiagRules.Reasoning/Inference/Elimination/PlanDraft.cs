namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>The variables and tables of one way to answer a question, before an order is chosen.</summary>
/// <remarks>
/// A graded node with three parents or more can enter as one table or as a chain of small ones with helper variables, whichever is the smaller table. Which is
/// better depends on the network, so the planner tries several limits.
/// </remarks>
internal sealed class PlanDraft
{
    /// <summary>No node's own table may be larger than this, whatever the draft; a chain takes its place.</summary>
    public const double LargestDense = 1 << 16;

    private readonly Network _network;
    private readonly PlanRequest _request;
    private readonly double _denseCells;
    private readonly List<int> _cards = [];
    private readonly List<bool> _late = [];
    private readonly List<double> _sweep = [];

    public PlanDraft(Network network, PlanRequest request, bool[] relevant, double denseCells)
    {
        _network = network;
        _request = request;
        _denseCells = denseCells;
        VariableOf = new int[network.Count];
        for (var node = 0; node < network.Count; node++)
        {
            VariableOf[node] = relevant[node] && (request.ShapeOf(node) is NodeShape.Free or NodeShape.Soft)
                ? AddVariable(network.Nodes[node].Grades, node + 0.5, request.IsMaximised(node))
                : -1;
        }

        for (var node = 0; node < network.Count; node++)
        {
            if (relevant[node] && network.Nodes[node].Kind != NodeKind.Root)
            {
                AddNode(node);
            }
        }
    }

    public int[] VariableOf { get; }

    public List<Factor> Factors { get; } = [];

    public List<SplitTerm> Splits { get; } = [];

    public List<int> SplitNodes { get; } = [];

    /// <summary>Whether some node could have entered in the other form.</summary>
    public bool HasChoice { get; private set; }

    public int[] Cards => [.. _cards];

    public bool[] Late => [.. _late];

    public IEnumerable<int[]> Scopes => Factors.Select(factor => Array.ConvertAll(factor.Free, axis => axis.Id));

    /// <summary>
    /// Place of each variable in a sweep over the nodes: a chain's helper goes just before the parent that its next link takes in. Chains swept side by side
    /// hold one helper each at any time, so the tables grow with the number of chains and not with their length.
    /// </summary>
    public double[] Sweep => [.. _sweep];

    private int AddVariable(int grades, double sweep, bool late = false)
    {
        _cards.Add(grades);
        _sweep.Add(sweep);
        _late.Add(late);
        return _cards.Count - 1;
    }

    private void AddNode(int node)
    {
        var model = _network.Nodes[node];
        if (_request.ShapeOf(node) == NodeShape.Split)
        {
            SplitNodes.Add(node);
            Splits.AddRange(Enumerable.Range(0, model.Parents.Length).Select(k => new SplitTerm(node, k, VariableOf[model.Parents[k].Node])));
        }
        else if (IsDense(node, model))
        {
            AddDense(node, model);
        }
        else if (_request.ShapeOf(node) == NodeShape.Fixed)
        {
            AddLinks(node, model, FactorForm.Reach, 2);
        }
        else
        {
            AddLinks(node, model, FactorForm.Chain, model.Grades);
        }
    }

    private bool IsDense(int node, NodeModel model)
    {
        if (model.Kind == NodeKind.Table || model.Parents.Length < 3)
        {
            return true;
        }

        HasChoice = true;
        var cells = VariableOf[node] < 0 ? 1.0 : model.Grades;
        foreach (var parent in model.Parents)
        {
            cells *= VariableOf[parent.Node] < 0 ? 1 : parent.Grades;
        }

        return cells <= _denseCells && model.DenseCells <= LargestDense;
    }

    private void AddDense(int node, NodeModel model)
    {
        var axes = new AxisList(this);
        var stride = 1;
        for (var k = model.Parents.Length - 1; k >= 0; k--)
        {
            axes.AddNode(model.Parents[k].Node, stride);
            stride *= model.Parents[k].Grades;
        }

        axes.AddNode(node, stride);
        Factors.Add(axes.ToFactor(node, FactorForm.Dense, 0, 0));
    }

    private void AddLinks(int node, NodeModel model, FactorForm form, int states)
    {
        var soFar = AddVariable(states, model.Parents[2].Node);
        var axes = new AxisList(this);
        axes.AddNode(model.Parents[1].Node, 1);
        axes.AddNode(model.Parents[0].Node, model.Parents[1].Grades);
        axes.AddVariable(soFar, model.Parents[1].Grades * model.Parents[0].Grades);
        Factors.Add(axes.ToFactor(node, form, 0, 0));
        for (var k = 2; k < model.Parents.Length; k++)
        {
            axes = new AxisList(this);
            axes.AddVariable(soFar, model.Parents[k].Grades * states);
            axes.AddNode(model.Parents[k].Node, states);
            var isLast = k == model.Parents.Length - 1;
            if (!isLast)
            {
                axes.AddVariable(soFar = AddVariable(states, model.Parents[k + 1].Node), 1);
            }
            else if (form == FactorForm.Chain)
            {
                axes.AddNode(node, 1);
            }

            // The last link of a reach chain is read at "reached", one cell on.
            Factors.Add(axes.ToFactor(node, form, k - 1, isLast && form == FactorForm.Reach ? 1 : 0));
        }
    }

    /// <summary>Sorts the axes of one table into those that vary and those that are fixed for a question.</summary>
    private sealed class AxisList(PlanDraft draft)
    {
        private readonly List<Axis> _free = [];
        private readonly List<Axis> _fixed = [];

        public void AddVariable(int variable, int stride) => _free.Add(new Axis(variable, stride));

        public void AddNode(int node, int stride)
        {
            if (draft.VariableOf[node] is >= 0 and var variable)
            {
                AddVariable(variable, stride);
            }
            else
            {
                _fixed.Add(new Axis(node, stride));
            }
        }

        public Factor ToFactor(int node, FactorForm form, int link, int start) => new(node, form, link, start, [.. _free], [.. _fixed]);
    }
}
