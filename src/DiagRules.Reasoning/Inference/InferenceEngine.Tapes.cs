using System.Collections.Concurrent;
using DiagRules.Reasoning.Inference.Elimination;
using DiagRules.Reasoning.Inference.Tapes;

namespace DiagRules.Reasoning.Inference;

public sealed partial class InferenceEngine
{
    /// <summary>Multiplications that cost about as much as one cell of a tree of tables.</summary>
    private const double ProductsPerCell = 3;

    private readonly ConcurrentBag<TapeMemory> _idleMemories = [];

    /// <summary>A tape of at most so many multiplications is run at once; the search for anything cheaper would take longer.</summary>
    private double QuickTape => 8 * Limits.DearCells;

    /// <summary>As the public method of this name, under other priors.</summary>
    internal double LogProbability(Evidence evidence, ReadOnlySpan<double> priors) => InferRoots(evidence, priors, [], []);

    /// <summary>Posteriors of roots: they need no place in the plan, so all questions about roots share one.</summary>
    /// <returns>Natural logarithm of the probability of the evidence.</returns>
    internal double InferRoots(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, Span<double> values)
    {
        var memory = RentMemory();
        try
        {
            return BestTape(memory, evidence, priors, []) is { } tape
                ? new TapeQuestion(Network, tape, memory, evidence, priors).Answer(roots, values)
                : Infer(evidence, priors, [], roots, Asking.Posterior, values);
        }
        finally
        {
            Return(memory);
        }
    }

    internal InferenceEstimate Estimate(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> nodes)
    {
        var memory = RentMemory();
        var work = Rent();
        try
        {
            return (AreRoots(nodes) ? BestTape(memory, evidence, priors, [])?.Estimate : null)
                ?? BestPlan(work, evidence, priors, nodes, Asking.Posterior).Estimate;
        }
        finally
        {
            Return(work);
            Return(memory);
        }
    }

    private bool AreRoots(ReadOnlySpan<int> nodes)
    {
        foreach (var node in nodes)
        {
            if (Network.KindOf(node) != NodeKind.Root)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The tape for a question, or null where the other kind of plan is cheaper.</summary>
    /// <param name="memory">Where the request is written.</param>
    /// <param name="evidence">What is known.</param>
    /// <param name="priors">Priors of the roots.</param>
    /// <param name="open">Nodes that are to be variables with all their grades.</param>
    private Tape? BestTape(TapeMemory memory, Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> open)
    {
        if ((Limits.Kinds & PlanKinds.Tapes) == 0)
        {
            return null;
        }

        Describe(memory.Request, evidence, open);
        var tape = CachedOrBuilt(memory.Request);
        if (tape.Estimate.TableCells > QuickTape && FixKnownRoots(memory.Request, evidence, priors))
        {
            var rival = CachedOrBuilt(memory.Request);
            tape = rival.IsAffordable && !(tape.IsAffordable && tape.Estimate.TableCells <= rival.Estimate.TableCells) ? rival : tape;
        }

        if (!tape.IsAffordable || tape.Estimate.TableCells <= QuickTape || Limits.Kinds == PlanKinds.Tapes)
        {
            return tape.IsAffordable ? tape : null;
        }

        var work = Rent();
        var plan = FindPlan(work, evidence, priors, open, Asking.Posterior);
        Return(work);
        return plan.IsAffordable && plan.Estimate.TableCells * ProductsPerCell < tape.Estimate.TableCells ? null : tape;
    }

    private Tape CachedOrBuilt(TapeRequest request)
    {
        if (_plans.Find(request.Key) is Tape known)
        {
            return known;
        }

        var tape = TapeBuilder.Build(Network, request, Limits.TableCells);
        _plans.Add(request.Key, tape);
        return tape;
    }

    private void Describe(TapeRequest request, Evidence evidence, ReadOnlySpan<int> open)
    {
        request.Clear();
        foreach (var node in open)
        {
            request.SetRole(Network.Checked(node), NodeRole.Open);
        }

        for (var node = 0; node < Network.Count; node++)
        {
            ref readonly var state = ref evidence.StateOf(node);
            var isOpen = request.RoleOf(node) == NodeRole.Open;
            if (Network.Nodes[node].Kind == NodeKind.Root)
            {
                request.SetRole(node, isOpen ? NodeRole.Open : NodeRole.Free);
            }
            else if (RoleOf(node, state, isOpen) is var role && role == NodeRole.Soft)
            {
                request.SetRuns(node, evidence.LikelihoodsOf(node));
            }
            else
            {
                request.SetRole(node, role);
            }
        }
    }

    private NodeRole RoleOf(int node, NodeState state, bool isOpen)
    {
        var isLeaf = !isOpen && !Network.HasChildren[node];
        return state.Kind switch
        {
            StateKind.None => isOpen ? NodeRole.Open : NodeRole.Free,
            StateKind.Exactly => NodeRole.Fixed,
            StateKind.AtMost when Network.Nodes[node].Kind == NodeKind.Graded && (state.Grade == 0 || isLeaf) => NodeRole.Split,
            StateKind.AtMost when state.Grade == 0 => NodeRole.Fixed,
            _ => isLeaf && Network.Nodes[node].Kind == NodeKind.Graded && Network.Nodes[node].Grades <= TapeRequest.MostGradesInRuns ? NodeRole.Soft : NodeRole.Open,
        };
    }

    private bool FixKnownRoots(TapeRequest request, Evidence evidence, ReadOnlySpan<double> priors)
    {
        var found = false;
        for (var node = 0; node < Network.Count; node++)
        {
            if (Network.Nodes[node].Kind == NodeKind.Root && RootSupport.OnlyGrade(Network, node, evidence, priors) >= 0)
            {
                request.SetRole(node, NodeRole.Fixed);
                found = true;
            }
        }

        return found;
    }

    private TapeMemory RentMemory() => _idleMemories.TryTake(out var memory) ? memory : new TapeMemory(Network);

    /// <summary>A memory that had to grow far beyond the usual is left to the garbage collector.</summary>
    private void Return(TapeMemory memory)
    {
        if (memory.Cells.Length <= MostIdleCells)
        {
            _idleMemories.Add(memory);
        }
    }
}
