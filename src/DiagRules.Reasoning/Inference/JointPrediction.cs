namespace DiagRules.Reasoning.Inference;

/// <summary>How probable each joint outcome of several nodes is, cause by cause, given what is known. Immutable and thread-safe.</summary>
/// <remarks>
/// An outcome is one grade for each node of <see cref="Nodes"/>; outcomes are numbered with the last node's grade changing fastest.
/// </remarks>
public sealed class JointPrediction
{
    private readonly CauseModel _model;
    private readonly double[] _table;
    private readonly int _columns;

    internal JointPrediction(CauseModel model, int[] nodes, int[] leftOut, double[] table)
    {
        _model = model;
        _table = table;
        _columns = model.Causes.Count + 2;
        Nodes = Array.AsReadOnly(nodes);
        LeftOut = Array.AsReadOnly(leftOut);
    }

    /// <summary>The nodes whose outcomes are told apart.</summary>
    public IReadOnlyList<int> Nodes { get; }

    /// <summary>Nodes that would have made too many outcomes; nothing is said about them. Usually empty.</summary>
    public IReadOnlyList<int> LeftOut { get; }

    /// <summary>Whether nodes were left out.</summary>
    public bool IsCut => LeftOut.Count > 0;

    /// <summary>Number of joint outcomes.</summary>
    public int Outcomes => _table.Length / _columns;

    /// <summary>The grade of the node at <paramref name="index"/> of <see cref="Nodes"/> in an outcome.</summary>
    public int GradeOf(int outcome, int index)
    {
        for (var k = Nodes.Count - 1; k > index; k--)
        {
            outcome /= _model.Network.GradesOf(Nodes[k]);
        }

        return outcome % _model.Network.GradesOf(Nodes[index]);
    }

    /// <summary><c>P(outcome | e)</c>, whatever is behind the complaint.</summary>
    public double Overall(int outcome) => Cell(outcome, _columns - 1);

    /// <summary><c>P(outcome | Z = 0, e)</c>; with absolute probabilities the same as <see cref="Overall"/>.</summary>
    public double GivenUnlisted(int outcome) => Cell(outcome, _columns - 2);

    /// <summary><c>P(outcome | Z = i, e)</c>, or given that the cause is present with absolute probabilities.</summary>
    /// <remarks>A cause that what is known excludes has no such distribution; it gets <see cref="Overall"/>.</remarks>
    /// <exception cref="ArgumentException">The node is no cause of the model.</exception>
    public double Given(int cause, int outcome) => Cell(outcome, _model.PositionOf(cause));

    /// <summary>The same by position in <see cref="CauseModel.Causes"/>.</summary>
    public double At(int position, int outcome) => Cell(outcome, position);

    private double Cell(int outcome, int column) => _table[(outcome * _columns) + column];
}
