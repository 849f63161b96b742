using DiagRules.Facts;
using DiagRules.Model.Conditions;

namespace DiagRules.Confidence;

/// <summary>
/// How likely a condition is to hold when readings are normal about their values with their standard uncertainty, each comparison
/// linear in them (first order, JCGM 100:2008, 5.1.2).
/// </summary>
/// <remarks>
/// Exact in the reading that moves the comparisons most; further readings that matter are taken at equally likely values, at most
/// <see cref="MostReadings"/> in all. Readings that decide nothing cost nothing.
/// </remarks>
internal sealed class ConditionProbability
{
    private const int MostReadings = 3;
    private const int PointsPerReading = 64;

    private static readonly double[] Points =
        [.. Enumerable.Range(0, PointsPerReading).Select(i => NormalDistribution.Quantile((i + 0.5) / PointsPerReading))];

    private readonly Condition _condition;
    private readonly SharpFacts _sharp;
    private readonly Dictionary<Comparison, Line> _lines = new(ReferenceEqualityComparer.Instance);
    private readonly int[] _readings;

    private ConditionProbability(Condition condition, IFacts facts)
    {
        _condition = condition;
        _sharp = new SharpFacts(facts);
        var close = ComparisonsIn(condition)
            .Where(comparison => comparison.Evaluate(facts) == Truth.Unknown && comparison.Evaluate(_sharp) != Truth.Unknown)
            .ToList();
        _readings = [.. close.SelectMany(comparison => comparison.Bases).Distinct()
            .Select(reading => (reading, pull: close.Max(comparison => Math.Abs(Pull(comparison, reading, facts)))))
            .Where(pair => pair.pull > 0)
            .OrderByDescending(pair => pair.pull).ThenBy(pair => pair.reading)
            .Take(MostReadings)
            .Select(pair => pair.reading)];
        foreach (var comparison in close)
        {
            var difference = comparison.Left.Evaluate(facts).Value - comparison.Right.Evaluate(facts).Value;
            _lines[comparison] = new Line(difference, [.. _readings.Select(reading => Pull(comparison, reading, facts))]);
        }
    }

    /// <summary>Probability 0..1 that the condition holds; <see langword="null"/> when it hangs on something not known.</summary>
    public static double? Of(Condition condition, IFacts facts)
    {
        var truth = condition.Evaluate(facts);
        if (truth != Truth.Unknown)
        {
            return truth == Truth.True ? 1 : 0;
        }

        var probability = new ConditionProbability(condition, facts);
        return condition.Evaluate(probability._sharp) == Truth.Unknown ? null : probability.Integrate();
    }

    private double Integrate()
    {
        var z = new double[_readings.Length];
        return _readings.Length == 0 ? (Holds(z) ? 1 : 0) : Over(1, z);
    }

    /// <summary>Averages over the readings from <paramref name="next"/> on; the first one is integrated exactly at the end.</summary>
    private double Over(int next, double[] z)
    {
        if (next == z.Length)
        {
            return Exactly(z);
        }

        double sum = 0;
        foreach (var point in Points)
        {
            z[next] = point;
            sum += Over(next + 1, z);
        }

        return sum / Points.Length;
    }

    private double Exactly(double[] z)
    {
        var breaks = new List<double> { double.NegativeInfinity, double.PositiveInfinity };
        foreach (var line in _lines.Values.Where(line => line.Pulls[0] != 0))
        {
            z[0] = 0;
            breaks.Add(-line.At(z) / line.Pulls[0]);
        }

        breaks.Sort();
        double sum = 0;
        for (var i = 1; i < breaks.Count; i++)
        {
            z[0] = double.IsInfinity(breaks[i - 1]) ? (double.IsInfinity(breaks[i]) ? 0 : breaks[i] - 1)
                : double.IsInfinity(breaks[i]) ? breaks[i - 1] + 1
                : (breaks[i - 1] + breaks[i]) / 2;
            if (Holds(z))
            {
                sum += NormalDistribution.Cumulative(breaks[i]) - NormalDistribution.Cumulative(breaks[i - 1]);
            }
        }

        return sum;
    }

    private bool Holds(double[] z) => Holds(_condition, z) == Truth.True;

    private Truth Holds(Condition condition, double[] z) => condition switch
    {
        AllOf all => all.Parts.Min(part => Holds(part, z)),
        AnyOf any => any.Parts.Max(part => Holds(part, z)),
        Negation negation => (Truth)(-(sbyte)Holds(negation.Part, z)),
        Comparison comparison when _lines.TryGetValue(comparison, out var line) => comparison.Holds(line.At(z), 0) ? Truth.True : Truth.False,
        _ => condition.Evaluate(_sharp),
    };

    /// <summary>How far one standard uncertainty of a reading moves a comparison.</summary>
    private static double Pull(Comparison comparison, int reading, IFacts facts) =>
        (comparison.Left.Evaluate(facts, reading).Rate - comparison.Right.Evaluate(facts, reading).Rate) * facts.Uncertainty(reading);

    private static IEnumerable<Comparison> ComparisonsIn(Condition condition) => condition switch
    {
        AllOf all => all.Parts.SelectMany(ComparisonsIn),
        AnyOf any => any.Parts.SelectMany(ComparisonsIn),
        Negation negation => ComparisonsIn(negation.Part),
        Comparison comparison => [comparison],
        _ => [],
    };

    /// <summary>Left minus right as a line in standardised readings.</summary>
    private sealed record Line(double AtZero, double[] Pulls)
    {
        public double At(double[] z)
        {
            var value = AtZero;
            for (var i = 0; i < Pulls.Length; i++)
            {
                value += Pulls[i] * z[i];
            }

            return value;
        }
    }
}
