namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>Makes a plan: leaves out what does not bear on the question, chooses the forms of tables and an order, and lays out the memory.</summary>
internal static class PlanBuilder
{
    /// <summary>A plan below this many cells is not worth a second try.</summary>
    private const double GoodEnough = 4096;

    /// <summary>A node whose own table is at most this large usually enters as one table.</summary>
    private const double UsualDense = 128;

    /// <summary>A first try this many times over the limit is given up early; no other order is going to mend it.</summary>
    private const double Hopeless = 10_000;

    /// <summary>Beyond this many variables looking for the smallest fill takes longer than it saves.</summary>
    private const int FewVariables = 250;

    private static readonly double[] OtherDense = [0, 24, PlanDraft.LargestDense];

    public static Plan Build(Network network, PlanRequest request, long allowedCells)
    {
        var relevant = Relevant(network, request);
        var (draft, order) = Choose(network, request, relevant, allowedCells);
        return order.Estimate.IsLowerBound || order.Estimate.TableCells > allowedCells
            ? new Plan { Estimate = order.Estimate, IsAffordable = false }
            : new PlanLayout(draft, order).ToPlan(network, request, relevant);
    }

    /// <summary>
    /// A node bears on the answer if something is known of it, it was asked for, or such a node lies below it. The rest is barren and sums to 1.
    /// </summary>
    private static bool[] Relevant(Network network, PlanRequest request)
    {
        var relevant = new bool[network.Count];
        for (var node = network.Count - 1; node >= 0; node--)
        {
            relevant[node] |= request.IsTarget(node) || request.ShapeOf(node) != NodeShape.Free;
            if (relevant[node])
            {
                foreach (var parent in network.Nodes[node].Parents)
                {
                    relevant[parent.Node] = true;
                }
            }
        }

        return relevant;
    }

    private static (PlanDraft Draft, EliminationOrder Order) Choose(Network network, PlanRequest request, bool[] relevant, long allowedCells)
    {
        var bestDraft = new PlanDraft(network, request, relevant, UsualDense);
        var best = EliminationOrder.Find(bestDraft, OrderHeuristic.MinWeight, allowedCells * Hopeless);
        if (best.Estimate.TableCells <= GoodEnough)
        {
            return (bestDraft, best);
        }

        foreach (var draft in Alternatives(network, request, relevant, bestDraft))
        {
            foreach (var heuristic in HeuristicsFor(draft, best.Estimate.IsLowerBound))
            {
                var order = EliminationOrder.Find(draft, heuristic, best.Estimate.TableCells);
                if (!order.Estimate.IsLowerBound && (best.Estimate.IsLowerBound || order.Estimate.TableCells < best.Estimate.TableCells))
                {
                    (bestDraft, best) = (draft, order);
                }
            }
        }

        return (bestDraft, best);
    }

    private static IEnumerable<PlanDraft> Alternatives(Network network, PlanRequest request, bool[] relevant, PlanDraft first)
        => first.HasChoice ? [first, .. OtherDense.Select(denseCells => new PlanDraft(network, request, relevant, denseCells))] : [first];

    /// <summary>Where the smallest table was hopeless as a guide, only the sweep may still help.</summary>
    private static ReadOnlySpan<OrderHeuristic> HeuristicsFor(PlanDraft draft, bool isHopeless) => (isHopeless, draft.Cards.Length <= FewVariables) switch
    {
        (true, _) => [OrderHeuristic.Sweep],
        (_, true) => [OrderHeuristic.Sweep, OrderHeuristic.MinWeight, OrderHeuristic.MinFill],
        _ => [OrderHeuristic.Sweep, OrderHeuristic.MinWeight],
    };
}
