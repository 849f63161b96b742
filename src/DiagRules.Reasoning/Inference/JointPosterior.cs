namespace DiagRules.Reasoning.Inference;

/// <summary>Joint probability of the grades of two nodes given the evidence. Immutable and thread-safe.</summary>
public sealed class JointPosterior
{
    private readonly double[] _cells;
    private readonly int _columns;

    internal JointPosterior(double[] cells, int columns, double logProbability)
    {
        _cells = cells;
        _columns = columns;
        LogProbability = logProbability;
    }

    /// <summary>Natural logarithm of the probability of the evidence; negative infinity if it cannot be (then every cell is 0).</summary>
    public double LogProbability { get; }

    /// <summary>P(first node has the first grade, second node the second grade | evidence).</summary>
    public double this[int firstGrade, int secondGrade]
        => (uint)secondGrade < (uint)_columns
            ? _cells[(firstGrade * _columns) + secondGrade]
            : throw new ArgumentOutOfRangeException(nameof(secondGrade), secondGrade, $"Expected a grade from 0 to {_columns - 1}.");
}
