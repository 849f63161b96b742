namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>Makes a plan: leaves out what does not bear on the question, chooses the forms of tables and an order, and lays out the memory.</summary>
internal static class PlanBuilder
{
    /// <summary>A plan below this many cells is not worth a second try.</summary>
    private const double GoodEnough = 4096;

    private const double UsualDense = 128;

    public static Plan Build(Network network, PlanRequest request, long allowedCells)
    {
        var relevant = Relevant(network, request);
        var (draft, order) = Choose(network, request, relevant);
        return order.Estimate.TableCells > allowedCells
            ? new Plan { Estimate = order.Estimate, IsAffordable = false }
            : new PlanLayout(draft, order).ToPlan(network, request, relevant);
    }

    /// <summary>A node bears on the answer if something is known of it, it was asked for, or such a node lies below it. The rest is barren and sums to 1.</summary>
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

    private static (PlanDraft Draft, EliminationOrder Order) Choose(Network network, PlanRequest request, bool[] relevant)
    {
        var bestDraft = new PlanDraft(network, request, relevant, UsualDense);
        var best = OrderOf(bestDraft, OrderHeuristic.MinWeight, double.PositiveInfinity)!;
        if (best.Estimate.TableCells > GoodEnough)
        {
            foreach (var draft in Alternatives(bestDraft))
            {
                foreach (var heuristic in (ReadOnlySpan<OrderHeuristic>)[OrderHeuristic.MinWeight, OrderHeuristic.MinFill])
                {
                    if (OrderOf(draft, heuristic, best.Estimate.TableCells) is { } order && order.Estimate.TableCells < best.Estimate.TableCells)
                    {
                        (bestDraft, best) = (draft, order);
                    }
                }
            }
        }

        return (bestDraft, best);

        IEnumerable<PlanDraft> Alternatives(PlanDraft first)
            => first.HasChoice
                ? [first, new PlanDraft(network, request, relevant, 0), new PlanDraft(network, request, relevant, 24), new PlanDraft(network, request, relevant, PlanDraft.LargestDense)]
                : [first];
    }

    private static EliminationOrder? OrderOf(PlanDraft draft, OrderHeuristic heuristic, double ceiling)
        => EliminationOrder.Find(draft.Cards, draft.Late, draft.Scopes, heuristic, ceiling);
}
