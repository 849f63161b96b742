using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

/// <summary>How much speaks for each cause. Immutable and thread-safe.</summary>
public sealed class Weighing
{
    private readonly CauseModel _model;
    private readonly PackedEvidence _evidence;
    private readonly double[] _confidences;

    internal Weighing(CauseModel model, SettledEvidence settled, Weights weights)
    {
        _model = model;
        _evidence = PackedEvidence.Of(settled.Observations);
        _confidences = Array.ConvertAll(weights.Numbers, weight => weight / weights.Total);
        LogProbability = weights.LogTotal;
        LeftOut = Array.AsReadOnly(settled.LeftOut);
        AreRepairsLeftOut = settled.AreRepairsLeftOut;
    }

    /// <summary>Confidence of each cause in the order of <see cref="CauseModel.Causes"/>, each 0..1.</summary>
    public ReadOnlySpan<double> Confidences => _confidences.AsSpan(..^1);

    /// <summary><c>P(Z = 0 | e)</c>, the confidence that something not listed is behind the complaint; 0 with absolute probabilities.</summary>
    public double Unlisted => _confidences[^1];

    /// <summary>
    /// Natural logarithm of the probability of what was observed, without what was left out. With shares, repairs tried in vain count as observations.
    /// </summary>
    public double LogProbability { get; }

    /// <summary>Nodes whose observations cannot be and were left out, ascending; usually empty. See <see cref="CauseModel.Weigh"/> for the choice.</summary>
    public IReadOnlyList<int> LeftOut { get; }

    /// <summary>Whether repairs tried in vain were left out because they rule out everything that the observations allow.</summary>
    public bool AreRepairsLeftOut { get; }

    /// <summary>Confidence of one cause: <c>P(Z = i | e)</c>, or <c>P(X_i = present | e)</c> with absolute probabilities.</summary>
    /// <exception cref="ArgumentException">The node is no cause of the model.</exception>
    public double Of(int cause) => _confidences[_model.PositionOf(cause)];

    /// <summary>
    /// <c>P(X_j = present | Z = i, e)</c> for every cause <c>j</c>: what else is wrong if <paramref name="cause"/> is primary (or, with absolute
    /// probabilities, present).
    /// </summary>
    /// <param name="cause">Node number of cause <c>i</c>.</param>
    /// <returns>
    /// In the order of <see cref="CauseModel.Causes"/>; 1 for the cause itself, all 0 if the cause is impossible. Asks a new question each time.
    /// </returns>
    /// <exception cref="ArgumentException">The node is no cause of the model.</exception>
    public IReadOnlyList<double> AlsoPresent(int cause) => _model.AlsoPresent(_evidence.Unpack(_model.Network), cause);
}
