using System.Globalization;

namespace DiagRules.Reasoning.Inference;

/// <summary>Checks and completes probability distributions over grades.</summary>
public static class Distribution
{
    /// <summary>How far a sum of probabilities may be from 1 before it is refused; nearer ones are divided by their sum.</summary>
    internal const double SumTolerance = 1e-6;

    /// <summary>What rounding may leave behind where the exact answer is 0.</summary>
    private const double Rounding = 1e-12;

    /// <summary>Completes the probabilities of the second and later grades with what they leave over for the first.</summary>
    /// <param name="later">Probabilities of the second, third, ... grade; each 0..1, together at most 1.</param>
    /// <returns>The full distribution. A rest below 1e-12 is exactly 0, so that "never" stays "never".</returns>
    /// <exception cref="ArgumentException">A number is not a probability, or they add up to more than 1.</exception>
    public static double[] WithRest(IReadOnlyList<double> later)
    {
        ArgumentNullException.ThrowIfNull(later);
        var full = new double[later.Count + 1];
        var sum = 0.0;
        for (var i = 0; i < later.Count; i++)
        {
            RequireProbability(later[i], $"the probability of grade {i + 1}", nameof(later));
            sum += full[i + 1] = later[i];
        }

        if (sum > 1 + SumTolerance)
        {
            throw new ArgumentException($"The later grades add up to {Text(sum)}; together they can be 1 at most.", nameof(later));
        }

        full[0] = 1 - sum < Rounding ? 0 : 1 - sum;
        return Normalised(full, "The distribution", nameof(later));
    }

    internal static void RequireProbability(double value, string subject, string parameter)
    {
        if (!(value >= 0 && value <= 1))
        {
            throw new ArgumentException($"Found {Text(value)} for {subject}; expected a probability between 0 and 1.", parameter);
        }
    }

    /// <summary>A copy that adds up to 1, or an exception that names <paramref name="subject"/>.</summary>
    internal static double[] Normalised(ReadOnlySpan<double> values, string subject, string parameter)
    {
        var sum = 0.0;
        foreach (var value in values)
        {
            if (!(value >= 0 && value <= 1 + SumTolerance))
            {
                throw new ArgumentException($"{subject} holds {Text(value)}; expected probabilities between 0 and 1.", parameter);
            }

            sum += value;
        }

        if (Math.Abs(sum - 1) > SumTolerance)
        {
            throw new ArgumentException($"{subject} adds up to {Text(sum)}; expected 1.", parameter);
        }

        var copy = values.ToArray();
        if (sum != 1)
        {
            for (var i = 0; i < copy.Length; i++)
            {
                copy[i] /= sum;
            }
        }

        return copy;
    }

    internal static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
