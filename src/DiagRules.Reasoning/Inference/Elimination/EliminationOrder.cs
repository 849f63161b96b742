using System.Numerics;

namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>By what the next variable to eliminate is chosen.</summary>
internal enum OrderHeuristic
{
    /// <summary>The smallest table.</summary>
    MinWeight,

    /// <summary>The fewest new neighbourhoods, weighted by their size.</summary>
    MinFill,

    /// <summary>Their place in a sweep, see <see cref="PlanDraft.Sweep"/>.</summary>
    Sweep,
}

/// <summary>A greedy elimination order and what it costs.</summary>
/// <param name="Order">Variables, first eliminated first.</param>
/// <param name="Neighbours">For each variable its neighbours when it is eliminated.</param>
/// <param name="Estimate">What it costs.</param>
internal sealed record EliminationOrder(int[] Order, int[][] Neighbours, InferenceEstimate Estimate)
{
    /// <summary>Finds an order, giving up as soon as it is clear that it costs more than <paramref name="ceiling"/> cells.</summary>
    /// <returns>The order; where given up, incomplete, with an estimate that is a lower bound.</returns>
    public static EliminationOrder Find(PlanDraft draft, OrderHeuristic heuristic, double ceiling)
        => new Search(draft.Cards, draft.Late, heuristic, draft.Sweep).Run(draft.Scopes, ceiling);

    /// <summary>The graph of variables that share a table, as rows of bits, shrinking as variables go.</summary>
    private sealed class Search(int[] cards, bool[] late, OrderHeuristic heuristic, double[] sweep)
    {
        private readonly int _words = (cards.Length + 63) / 64;
        private readonly ulong[] _adjacent = new ulong[cards.Length * ((cards.Length + 63) / 64)];
        private readonly double[] _cost = new double[cards.Length];
        private readonly bool[] _gone = new bool[cards.Length];
        private double _cells;
        private int _widest;

        public EliminationOrder Run(IEnumerable<int[]> scopes, double ceiling)
        {
            foreach (var scope in scopes)
            {
                Connect(scope);
            }

            for (var v = 0; v < cards.Length; v++)
            {
                _cost[v] = CostOf(v);
            }

            var order = new int[cards.Length];
            var neighbours = new int[cards.Length][];
            var steps = 0;
            while (steps < order.Length && _cells <= ceiling)
            {
                var v = order[steps++] = Cheapest();
                neighbours[v] = Eliminate(v);
            }

            return new EliminationOrder(order, neighbours, new InferenceEstimate(_cells, _widest, IsLowerBound: steps < order.Length));
        }

        private Span<ulong> Row(int v) => _adjacent.AsSpan(v * _words, _words);

        private void Connect(int[] scope)
        {
            foreach (var v in scope)
            {
                var row = Row(v);
                foreach (var u in scope)
                {
                    row[u >> 6] |= 1UL << (u & 63);
                }

                row[v >> 6] &= ~(1UL << (v & 63));
            }
        }

        /// <summary>Ties go to the smaller number, so that the same question always gets the same plan.</summary>
        private int Cheapest()
        {
            var best = -1;
            for (var v = 0; v < cards.Length; v++)
            {
                if (!_gone[v] && (best < 0 || (late[best] && !late[v]) || (late[best] == late[v] && _cost[v] < _cost[best])))
                {
                    best = v;
                }
            }

            return best;
        }

        private int[] Eliminate(int v)
        {
            var around = MembersOf(Row(v));
            _gone[v] = true;
            _cells += Weight(v);
            _widest = Math.Max(_widest, around.Length + 1);
            Connect(around);
            foreach (var u in around)
            {
                Row(u)[v >> 6] &= ~(1UL << (v & 63));
            }

            Refresh(around);
            return around;
        }

        private void Refresh(int[] around)
        {
            foreach (var u in heuristic == OrderHeuristic.Sweep ? [] : around)
            {
                _cost[u] = CostOf(u);
                if (heuristic == OrderHeuristic.MinFill)
                {
                    foreach (var further in MembersOf(Row(u)))
                    {
                        _cost[further] = CostOf(further);
                    }
                }
            }
        }

        private double CostOf(int v) => heuristic switch
        {
            OrderHeuristic.MinWeight => Weight(v),
            OrderHeuristic.MinFill => Fill(v),
            _ => sweep[v],
        };

        private double Weight(int v)
        {
            double weight = cards[v];
            var row = Row(v);
            for (var w = 0; w < row.Length; w++)
            {
                for (var bits = row[w]; bits != 0; bits &= bits - 1)
                {
                    weight *= cards[(w << 6) + BitOperations.TrailingZeroCount(bits)];
                }
            }

            return weight;
        }

        private double Fill(int v)
        {
            var fill = 0.0;
            var around = MembersOf(Row(v));
            for (var i = 0; i < around.Length; i++)
            {
                var row = Row(around[i]);
                for (var j = 0; j < i; j++)
                {
                    if ((row[around[j] >> 6] >> (around[j] & 63) & 1) == 0)
                    {
                        fill += (double)cards[around[i]] * cards[around[j]];
                    }
                }
            }

            return fill;
        }

        private static int[] MembersOf(ReadOnlySpan<ulong> row)
        {
            var count = 0;
            foreach (var word in row)
            {
                count += BitOperations.PopCount(word);
            }

            var members = new int[count];
            for (int w = 0, next = 0; w < row.Length; w++)
            {
                for (var bits = row[w]; bits != 0; bits &= bits - 1)
                {
                    members[next++] = (w << 6) + BitOperations.TrailingZeroCount(bits);
                }
            }

            return members;
        }
    }
}
