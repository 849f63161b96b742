namespace DiagRules.Reasoning.Planning;

/// <summary>One of the answers a check can give.</summary>
public sealed record PlanOutcome
{
    /// <summary>The probability of this answer under each cause, in the order of <see cref="Situation.Probabilities"/>; each 0..1.</summary>
    public required IReadOnlyList<double> Likelihoods { get; init; }

    /// <summary>The probability of this answer when the cause is something not listed; 0..1, read only where <see cref="Situation.Unlisted"/> is above 0.</summary>
    public double Unlisted { get; init; }

    /// <summary>Checks (indices) that are pointless after this answer: not planned any more, and no repair waits for them. None by default.</summary>
    public IReadOnlyList<int> MakesPointless { get; init; } = [];
}
