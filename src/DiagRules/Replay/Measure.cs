namespace DiagRules.Replay;

/// <summary>A score over several cases with its 95 % interval. Immutable.</summary>
/// <param name="Value">The score.</param>
/// <param name="Low">Lower end of the interval.</param>
/// <param name="High">Upper end of the interval.</param>
public readonly record struct Measure(double Value, double Low, double High)
{
    private const double Z95 = 1.959963984540054;
    private const int Resamples = 1000;

    /// <summary>A rate with the score interval of Wilson (Journal of the American Statistical Association 22, 1927).</summary>
    internal static Measure Rate(int hits, int count)
    {
        if (count == 0)
        {
            return new(double.NaN, 0, 1);
        }

        var p = (double)hits / count;
        var z2 = Z95 * Z95;
        var middle = (p + (z2 / (2 * count))) / (1 + (z2 / count));
        var half = Z95 / (1 + (z2 / count)) * Math.Sqrt((p * (1 - p) / count) + (z2 / (4.0 * count * count)));
        return new(p, Math.Max(0, middle - half), Math.Min(1, middle + half));
    }

    /// <summary>A mean with the percentile interval of the bootstrap (Efron, Annals of Statistics 7, 1979), seed fixed.</summary>
    internal static Measure Mean(IReadOnlyList<double> values)
    {
        if (values.Count == 0)
        {
            return new(double.NaN, double.NaN, double.NaN);
        }

        // The seed is fixed, so that the same cases give the same interval everywhere.
        var random = new Random(1979);
        var means = new double[Resamples];
        for (var i = 0; i < Resamples; i++)
        {
            double sum = 0;
            for (var k = 0; k < values.Count; k++)
            {
                sum += values[random.Next(values.Count)];
            }

            means[i] = sum / values.Count;
        }

        Array.Sort(means);
        return new(values.Average(), means[(int)(0.025 * Resamples)], means[(int)(0.975 * Resamples) - 1]);
    }
}
