using System.Runtime.Intrinsics;
using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>In which steps the grades of a node are tried out.</summary>
internal enum ForecastForm : byte
{
    /// <summary>Grade by grade.</summary>
    Exact,

    /// <summary>"At most g", which needs no variable for the node: one factor per parent.</summary>
    AtMost,

    /// <summary>"At most g" as if the node's own soft observation had not been made, which then weighs the differences.</summary>
    AtMostUnseen,
}

/// <summary>Tries out what could be seen next, four tries at a time on one tape.</summary>
internal readonly ref struct TapeForecast
{
    /// <summary>A difference of two probabilities below this part of the whole is rounding, and stands for 0.</summary>
    public const double Rounding = 1e-13;

    private readonly Network _network;
    private readonly Tape _tape;
    private readonly TapeMemory _memory;
    private readonly Evidence _evidence;
    private readonly ReadOnlySpan<int> _roots;
    private readonly TapeRun<Vector256<double>, FourLanes> _run;
    private readonly double _baseLog;
    private readonly double[] _alone;
    private readonly double[] _constants = new double[Lanes];
    private readonly double[] _logs = new double[Lanes];

    /// <summary>Works out what is known before anything is tried out.</summary>
    /// <param name="network">The network.</param>
    /// <param name="tape">A tape for the evidence.</param>
    /// <param name="memory">The memory.</param>
    /// <param name="evidence">What is known.</param>
    /// <param name="priors">Priors of the roots.</param>
    /// <param name="roots">Roots to read.</param>
    public TapeForecast(Network network, Tape tape, TapeMemory memory, Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots)
    {
        _network = network;
        _tape = tape;
        _memory = memory;
        _evidence = evidence;
        _roots = roots;
        _alone = new double[roots.Length];
        Present = new double[roots.Length + 1];
        IsPossible = new TapeLoading(network, tape, memory, evidence, priors).Load(out _);
        _run = new TapeRun<Vector256<double>, FourLanes>(tape, memory);
        if (!IsPossible)
        {
            return;
        }

        ReadAlone(priors);
        _run.Load(memory.Tables.AsSpan(0, tape.One + 1));
        Clear();
        _run.Forward(_logs);
        _baseLog = _logs[0];
        IsPossible = !double.IsNegativeInfinity(_baseLog);
        _run.Backward();
        Read(0, Present);
    }

    public static int Lanes => TapeRun<Vector256<double>, FourLanes>.Lanes;

    /// <summary>Whether the evidence can be; if not, nothing can be tried out.</summary>
    public bool IsPossible { get; }

    /// <summary>Probability that each root has its second grade, given what is known; and, last, 1.</summary>
    public double[] Present { get; }

    public ForecastForm FormOf(int node)
    {
        if (_tape.IsReadable(node) || _evidence.StateOf(node).IsCertain || _network.Nodes[node].Kind == NodeKind.Root)
        {
            return ForecastForm.Exact;
        }

        return _evidence.StateOf(node).Kind != StateKind.Soft ? ForecastForm.AtMost
            : _tape.VariableOf[node] >= 0 ? ForecastForm.AtMostUnseen
            : ForecastForm.Exact;
    }

    /// <summary>Takes back what was tried out in every lane.</summary>
    public void Clear()
    {
        _run.Load(_memory.Tables.AsSpan(0, _tape.Locals[^1]));
        Array.Fill(_constants, 1);
    }

    /// <summary>Tries a grade of a node out in one lane, or "at most" it, on top of what else is tried out there.</summary>
    public void Enter(int lane, int node, int grade)
    {
        var form = FormOf(node);
        if (form != ForecastForm.Exact)
        {
            EnterAtMost(lane, node, grade);
            if (form == ForecastForm.AtMostUnseen)
            {
                Forget(lane, _tape.VariableOf[node]);
            }
        }
        else if (_tape.IsReadable(node))
        {
            Restrict(lane, _tape.VariableOf[node], grade);
        }
        else if (_evidence.StateOf(node).Kind == StateKind.Soft && _network.Nodes[node].Kind != NodeKind.Root)
        {
            EnterLeaf(lane, node, grade);
        }
        else
        {
            _constants[lane] *= grade == _memory.FixedGrades[node] ? 1 : 0;
        }
    }

    /// <summary>Works the lanes out.</summary>
    public void Run()
    {
        _run.Forward(_logs);
        _run.Backward();
    }

    /// <summary>Probability of what was tried out in a lane and of each root's second grade, given what is known; last, that of what was tried out alone.</summary>
    public void Read(int lane, Span<double> present)
    {
        var factor = _constants[lane] > 0 && !double.IsNegativeInfinity(_logs[lane]) ? _constants[lane] * Math.Exp(_logs[lane] - _baseLog) : 0;
        for (var i = 0; i < _roots.Length; i++)
        {
            var variable = _tape.VariableOf[_roots[i]];
            var cell = variable < 0 ? 0 : ((_tape.Locals[variable] + 1) * Lanes) + lane;
            var probability = variable < 0 ? _alone[i] : _run.Numbers[cell] * _run.Derivatives[cell];
            present[i] = factor > 0 ? probability * factor : 0;
        }

        present[^1] = factor;
    }

    private void ReadAlone(ReadOnlySpan<double> priors)
    {
        Span<double> posterior = stackalloc double[2];
        for (var i = 0; i < _roots.Length; i++)
        {
            if (_tape.VariableOf[_roots[i]] < 0)
            {
                RootSupport.ReadAlone(_network, _roots[i], _evidence, priors, posterior);
                _alone[i] = posterior[1];
            }
        }
    }

    private void Restrict(int lane, int variable, int grade)
    {
        for (var state = 0; state < _tape.Variables[variable].Count; state++)
        {
            Multiply(lane, variable, state, state == grade ? 1 : 0);
        }
    }

    private void EnterAtMost(int lane, int node, int grade)
    {
        var model = _network.Nodes[node];
        var state = _evidence.StateOf(node);
        var seen = state.Kind == StateKind.AtMost ? state.Grade : model.Grades - 1;
        if (grade >= seen)
        {
            return;
        }

        _constants[lane] *= Ratio(model.BackgroundAtMost, grade, seen);
        for (var k = 0; k < model.Parents.Length; k++)
        {
            var parent = model.Parents[k].Node;
            if (!_tape.IsReadable(parent))
            {
                _constants[lane] *= Ratio(model.AtMost[k].AsSpan(_memory.FixedGrades[parent] * model.Grades), grade, seen);
                continue;
            }

            for (var p = 0; p < model.Parents[k].Grades; p++)
            {
                Multiply(lane, _tape.VariableOf[parent], p, Ratio(model.AtMost[k].AsSpan(p * model.Grades), grade, seen));
            }
        }
    }

    /// <summary>"At most g" in place of "at most what was seen", which is in the tables already.</summary>
    private static double Ratio(ReadOnlySpan<double> atMost, int grade, int seen) => atMost[seen] > 0 ? atMost[grade] / atMost[seen] : 0;

    private void Forget(int lane, int variable)
    {
        var states = _tape.Variables[variable];
        for (var state = 0; state < states.Count; state++)
        {
            var cell = ((_tape.Locals[variable] + state) * Lanes) + lane;
            _run.Numbers[cell] = states.Form == Gathering.AtMost && state + 1 < states.Count ? 0 : 1;
        }
    }

    /// <summary>A soft leaf under one variable at most: its likelihood is in the parent's cells, and one grade's part of it takes its place.</summary>
    private void EnterLeaf(int lane, int node, int grade)
    {
        var index = Array.FindIndex(_tape.Unaries, unary => unary.Node == node);
        var hasParent = index >= 0;
        var leaf = hasParent ? _tape.Unaries[index] : new UnaryLeaf(node, -1, -1);
        var parent = leaf.Parent;
        var grades = hasParent ? _network.Nodes[node].Parents[parent].Grades : 1;
        Span<double> whole = stackalloc double[grades];
        Span<double> part = stackalloc double[grades];
        Span<double> likelihoods = stackalloc double[_network.Nodes[node].Grades];
        likelihoods.Clear();
        likelihoods[grade] = _evidence.LikelihoodsOf(node)[grade];
        Leaves.LikelihoodByParent(_network, _tape, _memory, node, parent, _evidence.LikelihoodsOf(node), whole);
        Leaves.LikelihoodByParent(_network, _tape, _memory, node, parent, likelihoods, part);
        for (var p = 0; p < grades; p++)
        {
            var ratio = whole[p] > 0 ? part[p] / whole[p] : 0;
            if (hasParent)
            {
                Multiply(lane, leaf.Variable, p, ratio);
            }
            else
            {
                _constants[lane] *= ratio;
            }
        }
    }

    private void Multiply(int lane, int variable, int state, double factor) => _run.Numbers[((_tape.Locals[variable] + state) * Lanes) + lane] *= factor;
}
