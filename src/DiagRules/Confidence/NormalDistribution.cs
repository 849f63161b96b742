namespace DiagRules.Confidence;

/// <summary>The standard normal distribution.</summary>
internal static class NormalDistribution
{
    /// <summary>
    /// Probability of a value up to <paramref name="z"/>; absolute error below 1e-14. Series near zero (Abramowitz and Stegun, Handbook of
    /// Mathematical Functions, 26.2.11), continued fraction further out (26.2.14).
    /// </summary>
    public static double Cumulative(double z)
    {
        if (double.IsInfinity(z))
        {
            return z > 0 ? 1 : 0;
        }

        var density = Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
        if (Math.Abs(z) < 3)
        {
            double term = z, sum = z;
            for (var n = 1; Math.Abs(term) > 1e-17; n++)
            {
                term *= z * z / ((2 * n) + 1);
                sum += term;
            }

            return 0.5 + (density * sum);
        }

        var tail = 0.0;
        for (var n = 60; n >= 1; n--)
        {
            tail = n / (Math.Abs(z) + tail);
        }

        var upper = density / (Math.Abs(z) + tail);
        return z > 0 ? 1 - upper : upper;
    }

    /// <summary>The value that is exceeded with probability 1 - <paramref name="p"/>, 0 &lt; p &lt; 1, by bisection.</summary>
    public static double Quantile(double p)
    {
        double low = -40, high = 40;
        for (var i = 0; i < 80; i++)
        {
            var middle = (low + high) / 2;
            if (Cumulative(middle) < p)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }
}
