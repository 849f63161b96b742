namespace DiagRules.Reasoning.Inference;

/// <summary>Unnormalised weights of the causes and, last, of what is not listed, on a common logarithmic scale.</summary>
/// <param name="Numbers">The weights, divided by <c>exp(LogScale)</c>.</param>
/// <param name="Total">Their sum; 1 where causes are independent and their weights are posteriors.</param>
/// <param name="LogScale">Natural logarithm of the factor taken out.</param>
internal readonly record struct Weights(double[] Numbers, double Total, double LogScale)
{
    /// <summary>Whether the evidence leaves nothing to weigh.</summary>
    public bool IsZero => Total == 0;

    /// <summary>Natural logarithm of the probability of the evidence.</summary>
    public double LogTotal => LogScale + Math.Log(Total);
}
