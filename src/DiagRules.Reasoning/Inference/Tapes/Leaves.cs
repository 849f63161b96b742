using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>The distribution of a node given parents known for certain and, at most, one that is not.</summary>
internal static class Leaves
{
    /// <summary>Takes the background and all contributions known for certain into a distribution of the latest grade so far.</summary>
    public static void TakeInKnown(Tape tape, TapeMemory memory, NodeModel model, Span<double> latest)
    {
        TakeIn(model.Background, latest);
        for (var k = 0; k < model.Parents.Length; k++)
        {
            var parent = model.Parents[k].Node;
            if (!tape.IsReadable(parent))
            {
                TakeIn(model, k, memory.FixedGrades[parent], latest);
            }
        }
    }

    /// <summary>Takes one contribution more in.</summary>
    public static void TakeIn(NodeModel model, int parent, int grade, Span<double> latest)
        => TakeIn(model.Masses[parent].AsSpan(grade * model.Grades, model.Grades), latest);

    /// <summary>
    /// How likely what was seen of a leaf is, by the grade of the one parent that is a variable; with no such parent (-1), one number.
    /// </summary>
    public static void LikelihoodByParent(
        Network network, Tape tape, TapeMemory memory, int node, int parent, ReadOnlySpan<double> likelihoods, Span<double> byGrade)
    {
        var model = network.Nodes[node];
        if (model.Kind == NodeKind.Table)
        {
            var start = KnownPlace(network, tape, memory, node, out var stride);
            for (var grade = 0; grade < byGrade.Length; grade++)
            {
                byGrade[grade] = model.Dense()[start + (grade * stride)];
            }

            return;
        }

        Span<double> known = stackalloc double[model.Grades];
        Span<double> latest = stackalloc double[model.Grades];
        known.Clear();
        known[0] = 1;
        TakeInKnown(tape, memory, model, known);
        for (var grade = 0; grade < byGrade.Length; grade++)
        {
            known.CopyTo(latest);
            if (parent >= 0)
            {
                TakeIn(model, parent, grade, latest);
            }

            byGrade[grade] = 0;
            for (var g = 0; g < latest.Length; g++)
            {
                byGrade[grade] += latest[g] * likelihoods[g];
            }
        }
    }

    /// <summary>Where in a node's own table the grades known for certain lead.</summary>
    /// <param name="network">The network.</param>
    /// <param name="tape">The tape.</param>
    /// <param name="memory">Holds the grades known for certain.</param>
    /// <param name="node">A node with a table.</param>
    /// <param name="stride">Cells from one grade of the last parent that is a variable to the next.</param>
    public static int KnownPlace(Network network, Tape tape, TapeMemory memory, int node, out int stride)
    {
        var model = network.Nodes[node];
        var place = 0;
        var cells = 1;
        stride = 0;
        for (var k = model.Parents.Length - 1; k >= 0; k--)
        {
            var parent = model.Parents[k].Node;
            if (tape.IsReadable(parent))
            {
                stride = cells;
            }
            else
            {
                place += memory.FixedGrades[parent] * cells;
            }

            cells *= model.Parents[k].Grades;
        }

        return place + (tape.IsReadable(node) ? 0 : memory.FixedGrades[node] * cells);
    }

    private static void TakeIn(ReadOnlySpan<double> contribution, Span<double> latest)
    {
        double before = 0, atMost = 0;
        for (var grade = 0; grade < latest.Length; grade++)
        {
            atMost += contribution[grade];
            var soFar = latest[grade];
            latest[grade] = (soFar * atMost) + (before * contribution[grade]);
            before += soFar;
        }
    }
}
