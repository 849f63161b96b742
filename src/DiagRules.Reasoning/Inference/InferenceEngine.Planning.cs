using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

public sealed partial class InferenceEngine
{
    /// <summary>Size up to which a workspace is worth keeping for the next question: 2 MiB of tables.</summary>
    private const int MostIdleCells = 1 << 18;

    /// <summary>What becomes of the nodes asked for.</summary>
    private enum Asking
    {
        /// <summary>Their posteriors are wanted, each by itself.</summary>
        Posterior,

        /// <summary>Their joint posterior is wanted.</summary>
        Joint,

        /// <summary>They are about to be observed, and one plan is to serve whatever grade each turns out to have.</summary>
        AnyOutcome,

        /// <summary>Their most probable grades are wanted.</summary>
        MostProbable,
    }

    private Question Ask(
        Workspace work, Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> nodes, Asking asking = Asking.Posterior)
        => new(Network, Affordable(BestPlan(work, evidence, priors, nodes, asking)), work, evidence, priors);

    /// <summary>
    /// The plan for a question, or a rival for a dear one. Unobserved children join their parents in one table each; asking them grade by grade, as
    /// "at most g", needs none.
    /// </summary>
    private Plan BestPlan(Workspace work, Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> nodes, Asking asking)
    {
        var plan = FindPlan(work, evidence, priors, nodes, asking);
        if (plan.Estimate.TableCells <= Limits.DearCells || asking != Asking.Posterior || nodes.Length < 2)
        {
            return plan;
        }

        var rival = FindPlan(work, evidence, priors, AnchorsOf(evidence, nodes), asking);
        return rival.Estimate.TableCells < plan.Estimate.TableCells ? rival : plan;
    }

    private Plan Affordable(Plan plan) => plan.IsAffordable ? plan : throw new InferenceBudgetException(plan.Estimate, Limits.TableCells);

    /// <summary>
    /// The plan for a question. Cheap plans do not look at which roots are known, so that they serve more questions; a dear one gets a rival that does.
    /// </summary>
    private Plan FindPlan(Workspace work, Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> nodes, Asking asking)
    {
        Describe(work.Request, evidence, nodes, asking);
        var plan = CachedOrBuilt(work.Request);
        if (plan.Estimate.TableCells > Limits.DearCells && FixKnownRoots(work.Request, evidence, priors))
        {
            var rival = CachedOrBuilt(work.Request);
            return rival.Estimate.TableCells < plan.Estimate.TableCells ? rival : plan;
        }

        return plan;
    }

    private Plan CachedOrBuilt(PlanRequest request)
    {
        if (_plans.Find(request.Key) is Plan known)
        {
            return known;
        }

        var plan = PlanBuilder.Build(Network, request, Limits.TableCells);
        _plans.Add(request.Key, plan);
        return plan;
    }

    private void Describe(PlanRequest request, Evidence evidence, ReadOnlySpan<int> nodes, Asking asking)
    {
        request.Clear();
        foreach (var node in nodes)
        {
            request.SetTarget(Network.Checked(node));
            if (asking == Asking.MostProbable)
            {
                request.SetMaximised(node);
            }
        }

        for (var node = 0; node < Network.Count; node++)
        {
            if (Network.Nodes[node].Kind != NodeKind.Root)
            {
                var isOpen = asking == Asking.AnyOutcome && request.IsTarget(node);
                request.SetShape(node, isOpen ? NodeShape.Soft : ShapeOf(node, evidence.StateOf(node), request.IsTarget(node)));
            }
        }
    }

    private NodeShape ShapeOf(int node, NodeState state, bool isTarget) => state.Kind switch
    {
        StateKind.None => NodeShape.Free,
        StateKind.Exactly => NodeShape.Fixed,
        StateKind.AtMost when Network.Nodes[node].Kind == NodeKind.Graded && (state.Grade == 0 || !(isTarget || Network.HasChildren[node])) => NodeShape.Split,
        StateKind.AtMost when state.Grade == 0 => NodeShape.Fixed,
        _ => NodeShape.Soft,
    };

    private bool FixKnownRoots(PlanRequest request, Evidence evidence, ReadOnlySpan<double> priors)
    {
        var found = false;
        for (var node = 0; node < Network.Count; node++)
        {
            if (Network.Nodes[node].Kind == NodeKind.Root && RootSupport.OnlyGrade(Network, node, evidence, priors) >= 0)
            {
                request.SetShape(node, NodeShape.Fixed);
                found = true;
            }
        }

        return found;
    }

    private Workspace Rent() => _idle.TryTake(out var work) ? work : new Workspace(Network);

    /// <summary>A workspace that had to grow far beyond the usual is left to the garbage collector.</summary>
    private void Return(Workspace work)
    {
        if (work.Cells.Length <= MostIdleCells)
        {
            _idle.Add(work);
        }
    }

    private void Require(Evidence evidence)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        if (evidence.Network != Network)
        {
            throw new ArgumentException("The evidence is about another network; expected this engine's network.", nameof(evidence));
        }
    }
}
