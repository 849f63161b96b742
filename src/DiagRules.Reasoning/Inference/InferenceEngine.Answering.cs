using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

public sealed partial class InferenceEngine
{
    /// <summary>Posteriors of <paramref name="nodes"/>, written where the network's offsets say; all 0 if the evidence is impossible.</summary>
    /// <returns>Natural logarithm of the probability of the evidence.</returns>
    internal double Infer(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> nodes, Span<double> values)
        => AreRoots(nodes) ? InferRoots(evidence, priors, nodes, values) : Infer(evidence, priors, nodes, nodes, Asking.Posterior, values);

    /// <summary>The same for roots, with one plan for whatever grade <paramref name="open"/> are observed at.</summary>
    internal double InferRoots(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, ReadOnlySpan<int> open, Span<double> values)
        => Infer(evidence, priors, open, roots, Asking.AnyOutcome, values);

    private double Infer(
        Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> planned, ReadOnlySpan<int> read, Asking asking, Span<double> values)
    {
        var work = Rent();
        try
        {
            var question = Ask(work, evidence, priors, planned, asking);
            var log = question.Calibrate();
            if (double.IsNegativeInfinity(log))
            {
                Clear(read, values);
                return log;
            }

            if (ReadVariables(question, read, values))
            {
                ReadCumulative(question, read, values);
            }

            return log;
        }
        finally
        {
            Return(work);
        }
    }

    private Span<double> PosteriorOf(int node, Span<double> values) => values.Slice(Network.Offsets[node], Network.Nodes[node].Grades);

    private void Clear(ReadOnlySpan<int> nodes, Span<double> values)
    {
        foreach (var node in nodes)
        {
            PosteriorOf(node, values).Clear();
        }
    }

    /// <returns>Whether nodes remain that have no variable.</returns>
    private bool ReadVariables(Question question, ReadOnlySpan<int> nodes, Span<double> values)
    {
        var remain = false;
        foreach (var node in nodes)
        {
            if (question.IsCumulative(node))
            {
                remain = true;
            }
            else
            {
                question.Read(node, PosteriorOf(node, values));
            }
        }

        return remain;
    }

    /// <summary>Posteriors of nodes that have no variable, by entering "at most g" for each grade.</summary>
    private void ReadCumulative(Question question, ReadOnlySpan<int> nodes, Span<double> values)
    {
        question.KeepEvidence();
        foreach (var node in nodes)
        {
            if (question.IsCumulative(node))
            {
                var posterior = PosteriorOf(node, values);
                for (var grade = 0; grade < posterior.Length - 1; grade++)
                {
                    posterior[grade] = question.Vary(node, grade);
                }

                posterior[^1] = 1;
                Question.ToDifferences(posterior, posterior.Length);
            }
        }
    }

    private double Joint(Evidence evidence, int first, int second, double[] cells)
    {
        var work = Rent();
        try
        {
            var question = Ask(work, evidence, Network.Priors, [first, second], Asking.Joint);
            var log = question.Calibrate();
            if (!double.IsNegativeInfinity(log))
            {
                FillJoint(question, first, second, cells);
            }

            return log;
        }
        finally
        {
            Return(work);
        }
    }

    /// <summary>P(first, second | e) = P(first | e) P(second | first, e), with one more pass per grade of the first.</summary>
    private void FillJoint(Question question, int first, int second, double[] cells)
    {
        var columns = Network.Nodes[second].Grades;
        question.KeepEvidence();
        for (var grade = 0; grade < Network.Nodes[first].Grades; grade++)
        {
            var probability = question.Vary(first, grade);
            var row = cells.AsSpan(grade * columns, columns);
            if (probability > 0)
            {
                question.Read(second, row);
            }

            foreach (ref var cell in row)
            {
                cell *= probability;
            }
        }
    }

    private MostProbableExplanation MostProbable(Evidence evidence, ReadOnlySpan<int> nodes, double total)
    {
        var work = Rent();
        try
        {
            var plan = Affordable(FindPlan(work, evidence, Network.Priors, nodes, Asking.MostProbable));
            var question = new Question(Network, plan, work, evidence, Network.Priors);
            var log = question.Enter();
            var choices = Maximisation.TraceBack(plan, work);
            var grades = new Dictionary<int, int>();
            foreach (var node in nodes)
            {
                grades[node] = question.ChoiceOf(node, choices);
            }

            return new MostProbableExplanation(grades, log - total, total);
        }
        finally
        {
            Return(work);
        }
    }
}
