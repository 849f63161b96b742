namespace DiagRules.Benchmarks.Simulation;

/// <summary>A mean with its 95 % interval, by the normal approximation.</summary>
internal sealed class Estimate
{
    public Estimate(IReadOnlyList<double> values)
    {
        Mean = values.Average();
        var mean = Mean;
        var variance = values.Sum(value => (value - mean) * (value - mean)) / Math.Max(1, values.Count - 1);
        HalfWidth = 1.96 * Math.Sqrt(variance / values.Count);
    }

    public double Mean { get; }

    public double HalfWidth { get; }
}
