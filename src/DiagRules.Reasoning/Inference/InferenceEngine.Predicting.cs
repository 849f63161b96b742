using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

public sealed partial class InferenceEngine
{
    /// <summary>A difference of two probabilities below this is rounding, and stands for 0.</summary>
    private const double Rounding = 1e-13;

    /// <summary>For each of several roots: posteriors of each target if that root has its second grade.</summary>
    /// <param name="evidence">The evidence.</param>
    /// <param name="priors">Priors of the roots.</param>
    /// <param name="roots">Roots to condition on, one at a time.</param>
    /// <param name="targets">Nodes to predict.</param>
    /// <param name="rows">Per target a row of grades for each root; a row stays 0 where the root cannot have its second grade.</param>
    /// <remarks>
    /// One forward and one backward pass per grade of each target: the grade is entered as one more factor on variables that are there anyway, so all targets
    /// share one plan, and the posteriors of all roots come back at once. A target nothing was seen of is entered as "at most g", which needs no table over its
    /// parents. Its probabilities are differences and so exact to about 1e-15, not relatively; a single target is given a table and has no such differences.
    /// </remarks>
    /// <returns>Natural logarithm of the probability of the evidence.</returns>
    internal double Predict(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, ReadOnlySpan<int> targets, ReadOnlySpan<double[]> rows)
    {
        var work = Rent();
        try
        {
            var plan = FindPlan(work, evidence, priors, targets.Length == 1 ? targets : AnchorsOf(evidence, targets), Asking.Posterior);
            if (plan.Estimate.TableCells > DearCells && targets.Length > 1)
            {
                // Fewer targets at a time join fewer nodes.
                var half = targets.Length / 2;
                Predict(evidence, priors, roots, targets[..half], rows[..half]);
                return Predict(evidence, priors, roots, targets[half..], rows[half..]);
            }

            return PredictWith(Affordable(plan), work, evidence, priors, roots, targets, rows);
        }
        finally
        {
            Return(work);
        }
    }

    /// <summary>The nodes that must be variables for the targets to be predicted: the target itself where it has a table or evidence, or else its parents.</summary>
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

    private double PredictWith(
        Plan plan, Workspace work, Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, ReadOnlySpan<int> targets, ReadOnlySpan<double[]> rows)
    {
        var log = Calibrate(work, evidence, priors, plan);
        if (double.IsNegativeInfinity(log))
        {
            return log;
        }

        var present = new double[roots.Length];
        ReadPresent(work, plan, evidence, priors, roots, present, 1);
        work.KeepLocals(plan);
        var variants = new double[roots.Length];
        for (var t = 0; t < targets.Length; t++)
        {
            var grades = Network.Nodes[targets[t]].Grades;
            for (var grade = 0; grade < grades; grade++)
            {
                var ratio = Vary(work, plan, evidence, targets[t], grade);
                ReadPresent(work, plan, evidence, priors, roots, variants, ratio);
                SetColumn(rows[t], grades, grade, variants, present);
            }

            if (IsCumulative(plan, evidence, targets[t]))
            {
                ToDifferences(rows[t], grades);
            }
        }

        return log;
    }

    /// <summary>Whether a target is entered as "at most g" rather than "g".</summary>
    private bool IsCumulative(Plan plan, Evidence evidence, int target)
        => plan.VariableOf[target] < 0 && Network.Nodes[target].Kind != NodeKind.Root && !evidence.StateOf(target).IsCertain;

    /// <summary>Enters one grade of a target on top of the evidence and passes messages again.</summary>
    /// <returns>How much less probable that makes the evidence, 0..1.</returns>
    private double Vary(Workspace work, Plan plan, Evidence evidence, int target, int grade)
    {
        work.RestoreLocals(plan);
        var constant = 1.0;
        if (plan.VariableOf[target] is >= 0 and var variable)
        {
            work.Restrict(plan, variable, grade);
        }
        else if (IsCumulative(plan, evidence, target))
        {
            constant = LimitParents(work, plan, target, grade);
        }
        else
        {
            // Known for certain: a root by the plan, another node by its observation.
            constant = grade == (Network.Nodes[target].Kind == NodeKind.Root ? work.FixedGrades[target] : evidence.StateOf(target).Grade) ? 1 : 0;
        }

        var log = constant > 0 ? Propagation.Forward(plan, work) : double.NegativeInfinity;
        if (double.IsNegativeInfinity(log))
        {
            return 0;
        }

        Propagation.Backward(plan, work);
        return constant * Math.Exp(log - work.BaseLog);
    }

    /// <summary>Multiplies in P(target at most grade | parents), one factor per parent.</summary>
    /// <returns>The part that does not depend on variables.</returns>
    private double LimitParents(Workspace work, Plan plan, int target, int grade)
    {
        var model = Network.Nodes[target];
        var constant = model.BackgroundAtMost[grade];
        for (var k = 0; k < model.Parents.Length; k++)
        {
            var atMost = model.AtMost[k].AsSpan(grade);
            var parent = model.Parents[k].Node;
            if (plan.VariableOf[parent] is >= 0 and var variable)
            {
                work.MultiplyLocal(plan, variable, atMost, model.Grades);
            }
            else
            {
                constant *= atMost[work.FixedGrades[parent] * model.Grades];
            }
        }

        return constant;
    }

    /// <summary>Probability that each root has its second grade, times <paramref name="factor"/>.</summary>
    private void ReadPresent(Workspace work, Plan plan, Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, Span<double> present, double factor)
    {
        present.Clear();
        Span<double> posterior = stackalloc double[2];
        for (var i = 0; i < roots.Length && factor > 0; i++)
        {
            Read(work, plan, evidence, priors, roots[i], posterior);
            present[i] = posterior[1] * factor;
        }
    }

    private static void SetColumn(double[] rows, int grades, int grade, double[] variants, double[] present)
    {
        for (var i = 0; i < present.Length; i++)
        {
            rows[(i * grades) + grade] = present[i] > 0 ? variants[i] / present[i] : 0;
        }
    }

    private static void ToDifferences(double[] rows, int grades)
    {
        for (var i = rows.Length - 1; i > 0; i--)
        {
            if (i % grades > 0)
            {
                var difference = rows[i] - rows[i - 1];
                rows[i] = difference < Rounding ? 0 : difference;
            }
        }
    }
}
