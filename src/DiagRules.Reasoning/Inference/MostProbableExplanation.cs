namespace DiagRules.Reasoning.Inference;

/// <summary>The most probable grades of several nodes together, given the evidence (Pearl 1988). Immutable and thread-safe.</summary>
/// <param name="Grades">The grade of each node asked for, by node number; empty if the evidence is impossible.</param>
/// <param name="LogProbability">Natural logarithm of the probability of these grades given the evidence; negative infinity if that is impossible.</param>
/// <param name="LogProbabilityOfEvidence">Natural logarithm of the probability of the evidence.</param>
public sealed record MostProbableExplanation(IReadOnlyDictionary<int, int> Grades, double LogProbability, double LogProbabilityOfEvidence)
{
    /// <summary>Probability of these grades given the evidence.</summary>
    public double Probability => Math.Exp(LogProbability);
}
