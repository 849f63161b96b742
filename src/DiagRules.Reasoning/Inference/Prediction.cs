namespace DiagRules.Reasoning.Inference;

/// <summary>How probable each grade of one node is, cause by cause, given what is known. Immutable and thread-safe.</summary>
public sealed class Prediction
{
    private readonly CauseModel _model;
    private readonly double[] _rows;
    private readonly double[] _overall;

    internal Prediction(CauseModel model, int node, double[] rows, double[] overall)
    {
        _model = model;
        _rows = rows;
        _overall = overall;
        Node = node;
    }

    /// <summary>The node predicted.</summary>
    public int Node { get; }

    /// <summary>Number of its grades.</summary>
    public int Grades => _overall.Length;

    /// <summary><c>P(grade | e)</c>, whatever is behind the complaint.</summary>
    public ReadOnlySpan<double> Overall => _overall;

    /// <summary><c>P(grade | Z = 0, e)</c>; with absolute probabilities the same as <see cref="Overall"/>.</summary>
    public ReadOnlySpan<double> GivenUnlisted => _rows.AsSpan(^Grades..);

    /// <summary><c>P(grade | Z = i, e)</c>, or given that the cause is present with absolute probabilities.</summary>
    /// <remarks>A cause that what is known excludes has no such distribution; it gets <see cref="Overall"/>.</remarks>
    /// <exception cref="ArgumentException">The node is no cause of the model.</exception>
    public ReadOnlySpan<double> Given(int cause) => At(_model.PositionOf(cause));

    /// <summary>The same by position in <see cref="CauseModel.Causes"/>.</summary>
    public ReadOnlySpan<double> At(int position) => _rows.AsSpan(position * Grades, Grades);
}
