using System.Numerics;

namespace DiagRules.Reasoning.Testability;

/// <summary>Which check shows which cause: the dependency matrix (D-matrix) of testability analysis. Immutable; safe to share between threads.</summary>
/// <remarks>
/// A check is taken to be sure here: it shows a cause whenever that is present, and nothing else. Terms after MIL-STD-2165 (1985) and IEEE Std 1522-2004.
/// </remarks>
public sealed class DetectionMatrix
{
    private readonly BigInteger[] _signatures;
    private readonly double[] _rates;

    /// <summary>Makes a matrix.</summary>
    /// <param name="shows">One row per cause, one column per check: whether the check shows the cause.</param>
    /// <param name="rates">How often each cause happens, in any unit common to all; finite, 0 or more, not all 0.</param>
    /// <exception cref="ArgumentException">There is no cause, the rows differ in length, or the rates do not fit.</exception>
    public DetectionMatrix(IReadOnlyList<IReadOnlyList<bool>> shows, IReadOnlyList<double> rates)
    {
        ArgumentNullException.ThrowIfNull(shows);
        ArgumentNullException.ThrowIfNull(rates);
        if (shows.Count == 0)
        {
            throw new ArgumentException("The matrix has no rows; it needs one for every cause.", nameof(shows));
        }

        CheckCount = shows[0].Count;
        for (var cause = 0; cause < shows.Count; cause++)
        {
            if (shows[cause].Count != CheckCount)
            {
                throw new ArgumentException($"Row {cause} has {shows[cause].Count} columns and row 0 has {CheckCount}; they must be as long as each other.", nameof(shows));
            }
        }

        if (rates.Count != shows.Count || rates.Any(r => !double.IsFinite(r) || r < 0) || rates.All(r => r == 0))
        {
            throw new ArgumentException($"There must be one rate for each of the {shows.Count} causes, finite, 0 or more, and not all 0.", nameof(rates));
        }

        _signatures = [.. shows.Select(Signature)];
        _rates = [.. rates];
    }

    /// <summary>The number of causes (rows).</summary>
    public int CauseCount => _signatures.Length;

    /// <summary>The number of checks (columns).</summary>
    public int CheckCount { get; }

    internal IReadOnlyList<double> Rates => _rates;

    /// <summary>The checks that show a cause, as a set of bits.</summary>
    internal BigInteger Signature(int cause) => _signatures[cause];

    /// <summary>Works out what these checks can find and tell apart.</summary>
    /// <param name="mostCheckSets">How many sets may be kept while the smallest sets of checks are looked for; at least 1, default 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mostCheckSets"/> is below 1.</exception>
    public TestabilityReport Analyse(int mostCheckSets = 1000)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(mostCheckSets, 1);
        return new TestabilityAnalysis(this).Report(mostCheckSets);
    }

    private static BigInteger Signature(IReadOnlyList<bool> row)
    {
        var signature = BigInteger.Zero;
        for (var check = 0; check < row.Count; check++)
        {
            signature |= row[check] ? BigInteger.One << check : BigInteger.Zero;
        }

        return signature;
    }
}
