using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

public sealed partial class InferenceEngine
{
    /// <summary>For each of several roots: posteriors of each target if that root has its second grade; and, last, whatever the roots are.</summary>
    /// <param name="evidence">The evidence.</param>
    /// <param name="priors">Priors of the roots.</param>
    /// <param name="roots">Roots to condition on, one at a time.</param>
    /// <param name="targets">Nodes to predict.</param>
    /// <param name="rows">Per target a row of grades for each root, 0 where the root cannot have its second grade; and one more for all.</param>
    /// <remarks>
    /// One forward and one backward pass per grade of each target: the grade is entered as one more factor on variables that are there anyway, so all targets
    /// share one plan, and the posteriors of all roots come back at once. A target nothing was seen of is entered as "at most g", which needs no table over its
    /// parents. Its probabilities are differences and so exact to about 1e-15, not relatively; a single target is given a table and has no such differences.
    /// </remarks>
    internal void Predict(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, ReadOnlySpan<int> targets, ReadOnlySpan<double[]> rows)
    {
        if (!Forecast(evidence, priors, roots, targets, rows))
        {
            PredictWithBuckets(evidence, priors, roots, targets, rows);
        }
    }

    private void PredictWithBuckets(
        Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, ReadOnlySpan<int> targets, ReadOnlySpan<double[]> rows)
    {
        var work = Rent();
        try
        {
            var plan = FindPlan(work, evidence, priors, targets.Length == 1 ? targets : AnchorsOf(evidence, targets), Asking.Posterior);
            if (plan.Estimate.TableCells > Limits.DearCells && targets.Length > 1)
            {
                // Fewer targets at a time join fewer nodes.
                var half = targets.Length / 2;
                PredictWithBuckets(evidence, priors, roots, targets[..half], rows[..half]);
                PredictWithBuckets(evidence, priors, roots, targets[half..], rows[half..]);
                return;
            }

            Predict(new Question(Network, Affordable(plan), work, evidence, priors), roots, targets, rows);
        }
        finally
        {
            Return(work);
        }
    }

    /// <summary>
    /// The nodes that must be variables for the targets to be predicted: the target itself where it has a table or evidence, or else its parents.
    /// </summary>
    private int[] AnchorsOf(Evidence evidence, ReadOnlySpan<int> targets)
    {
        var anchors = new List<int>();
        foreach (var target in targets)
        {
            if (Network.Nodes[target].Kind != NodeKind.Graded || evidence.StateOf(target).Kind != StateKind.None)
            {
                anchors.Add(target);
            }
            else
            {
                anchors.AddRange(Network.Nodes[target].ParentList);
            }
        }

        return [.. anchors];
    }

    private void Predict(Question question, ReadOnlySpan<int> roots, ReadOnlySpan<int> targets, ReadOnlySpan<double[]> rows)
    {
        if (double.IsNegativeInfinity(question.Calibrate()))
        {
            return;
        }

        var present = new double[roots.Length + 1];
        var varied = new double[roots.Length + 1];
        question.ReadPresent(roots, present, 1);
        question.KeepEvidence();
        for (var t = 0; t < targets.Length; t++)
        {
            var grades = Network.Nodes[targets[t]].Grades;
            var isCumulative = question.IsCumulative(targets[t]);
            for (var grade = 0; grade < (isCumulative ? grades - 1 : grades); grade++)
            {
                question.ReadPresent(roots, varied, question.Vary(targets[t], grade));
                SetColumn(rows[t].AsSpan(grade), grades, varied, present);
            }

            if (isCumulative)
            {
                // "At most the last grade" is certain.
                SetColumn(rows[t].AsSpan(grades - 1), grades, present, present);
                Question.ToDifferences(rows[t].AsSpan(0, present.Length * grades), grades);
            }
        }
    }

    private static void SetColumn(Span<double> column, int step, ReadOnlySpan<double> varied, ReadOnlySpan<double> present)
    {
        for (var i = 0; i < present.Length; i++)
        {
            column[i * step] = present[i] > 0 ? varied[i] / present[i] : 0;
        }
    }
}
