using System.Numerics;

namespace DiagRules.Reasoning.Testability;

/// <summary>Figures of merit of a matrix (MIL-STD-2165, 1985; IEEE Std 1522-2004; Simpson and Sheppard, System Test and Diagnosis, 1994).</summary>
internal sealed class TestabilityAnalysis
{
    private readonly DetectionMatrix _matrix;
    private readonly int[] _detected;
    private readonly int[][] _groups;
    private readonly BigInteger[] _signatures;

    internal TestabilityAnalysis(DetectionMatrix matrix)
    {
        _matrix = matrix;
        _detected = [.. Enumerable.Range(0, matrix.CauseCount).Where(c => !matrix.Signature(c).IsZero)];
        _groups = [.. _detected.GroupBy(matrix.Signature).Select(g => g.ToArray())];
        // A sound machine shows nothing; telling a cause from it is finding it.
        _signatures = [BigInteger.Zero, .. _groups.Select(g => matrix.Signature(g[0]))];
    }

    internal TestabilityReport Report(int mostCheckSets)
    {
        var differences = Differences();
        var sets = new MinimalSets(mostCheckSets);
        sets.Hit(differences);
        return new TestabilityReport(Isolation(_ => 1), Isolation(c => _matrix.Rates[c]))
        {
            Undetected = [.. Enumerable.Range(0, _matrix.CauseCount).Except(_detected)],
            AmbiguityGroups = _groups,
            DetectionRate = _detected.Length / (double)_matrix.CauseCount,
            DetectionRateByRate = _detected.Sum(c => _matrix.Rates[c]) / _matrix.Rates.Sum(),
            MeanGroupSize = _groups.Length == 0 ? 0 : _groups.Average(g => g.Length),
            ExpectedGroupSize = ExpectedSize(_ => 1),
            ExpectedGroupSizeByRate = ExpectedSize(c => _matrix.Rates[c]),
            RedundantChecks = [.. Enumerable.Range(0, _matrix.CheckCount).Where(c => !differences.Contains(BigInteger.One << c))],
            MinimalCheckSets = sets.InOrder(_matrix.CheckCount),
            HasAllMinimalCheckSets = sets.IsComplete,
            Imitations = [.. Imitations()],
            HiddenCauses = [.. Hidden()],
        };
    }

    /// <summary>Per group size from 1 up to the largest the share of weight in groups of at most that size.</summary>
    private double[] Isolation(Func<int, double> weight)
    {
        var all = _detected.Sum(weight);
        var largest = _groups.Length == 0 ? 0 : _groups.Max(g => g.Length);
        return [.. Enumerable.Range(1, largest).Select(size => all > 0 ? _groups.Where(g => g.Length <= size).Sum(g => g.Sum(weight)) / all : 0)];
    }

    private double ExpectedSize(Func<int, double> weight)
    {
        var all = _detected.Sum(weight);
        return all > 0 ? _groups.Sum(g => g.Length * g.Sum(weight)) / all : 0;
    }

    /// <summary>For every two signatures the checks that tell them apart; a set of checks that misses one of these loses something.</summary>
    private HashSet<BigInteger> Differences()
    {
        var differences = new HashSet<BigInteger>();
        for (var i = 0; i < _signatures.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                differences.Add(_signatures[i] ^ _signatures[j]);
            }
        }

        return differences;
    }

    private IEnumerable<Imitation> Imitations()
    {
        var bySignature = _groups.ToDictionary(g => _matrix.Signature(g[0]));
        for (var i = 0; i < _detected.Length; i++)
        {
            for (var j = i + 1; j < _detected.Length; j++)
            {
                var (first, second) = (_detected[i], _detected[j]);
                int[] alike = [.. bySignature.GetValueOrDefault(_matrix.Signature(first) | _matrix.Signature(second), []).Where(c => c != first && c != second)];
                if (alike.Length > 0)
                {
                    yield return new Imitation(first, second, alike);
                }
            }
        }
    }

    private IEnumerable<HiddenCause> Hidden() =>
        from cause in _detected
        from other in _detected
        let signature = _matrix.Signature(cause)
        where signature != _matrix.Signature(other) && (signature & _matrix.Signature(other)) == signature
        select new HiddenCause(cause, other);
}
