using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>One question about roots, answered with a tape.</summary>
internal readonly ref struct TapeQuestion(Network network, Tape tape, TapeMemory memory, Evidence evidence, ReadOnlySpan<double> priors)
{
    private readonly ReadOnlySpan<double> _priors = priors;

    /// <summary>Natural logarithm of the probability of the evidence; if <paramref name="roots"/> are named, their posteriors too.</summary>
    /// <param name="roots">Roots to read.</param>
    /// <param name="values">Where their posteriors go, as the network's offsets say; all 0 if the evidence is impossible.</param>
    public double Answer(ReadOnlySpan<int> roots, Span<double> values)
    {
        foreach (var root in roots)
        {
            values.Slice(network.Offsets[root], network.Nodes[root].Grades).Clear();
        }

        if (!new TapeLoading(network, tape, memory, evidence, _priors).Load(out var scale))
        {
            return double.NegativeInfinity;
        }

        var run = new TapeRun<double, SingleLane>(tape, memory);
        run.Load(memory.Tables.AsSpan(0, tape.One + 1));
        Span<double> log = stackalloc double[1];
        run.Forward(log);
        if (double.IsNegativeInfinity(log[0]) || roots.Length == 0)
        {
            return log[0] + scale;
        }

        run.Backward();
        foreach (var root in roots)
        {
            Read(run, root, values.Slice(network.Offsets[root], network.Nodes[root].Grades));
        }

        return log[0] + scale;
    }

    private void Read(TapeRun<double, SingleLane> run, int root, Span<double> posterior)
    {
        if (tape.VariableOf[root] is >= 0 and var variable)
        {
            for (var grade = 0; grade < posterior.Length; grade++)
            {
                var cell = tape.Locals[variable] + grade;
                posterior[grade] = run.Numbers[cell] * run.Derivatives[cell];
            }
        }
        else
        {
            RootSupport.ReadAlone(network, root, evidence, _priors, posterior);
        }
    }
}
