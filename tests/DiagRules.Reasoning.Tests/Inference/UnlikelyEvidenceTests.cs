using System.Numerics;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>
/// Evidence of probability near 1e-40 against enumeration in exact integers. A signed factorisation (Heckerman 1989) adds and subtracts terms near 1 here, and
/// would be left with no digit at all.
/// </summary>
public class UnlikelyEvidenceTests
{
    private const int Causes = 6;
    private const int Findings = 8;

    /// <summary>All probabilities are whole millionths.</summary>
    private const int Unit = 1_000_000;

    private readonly int[] _priors = [20, 3, 150, 1, 40, 7];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void PosteriorsAndProbability_KeepTwelveDigits(bool withTapes)
    {
        var limits = new InferenceLimits { Kinds = withTapes ? PlanKinds.Tapes : PlanKinds.Buckets };
        var builder = new NetworkBuilder();
        int[] causes = [.. _priors.Select((prior, c) => builder.AddCause($"c{c}", prior / (double)Unit))];
        var findings = Enumerable.Range(0, Findings).Select(f =>
        {
            var contributions = causes.Select(c => Contribution.OfLaterGrades(c, [Link(c, f) / (double)Unit])).ToArray();
            return builder.AddGraded($"f{f}", 2, Distribution.WithRest([Leak(f) / (double)Unit]), contributions);
        }).ToArray();
        var evidence = new Evidence(builder.Build());
        Array.ForEach(findings, finding => evidence.Observe(finding, 1));

        var posteriors = new InferenceEngine(evidence.Network, limits).Infer(evidence, causes);

        var total = Weight(_ => true);
        for (var c = 0; c < Causes; c++)
        {
            var cause = c;
            (posteriors.Of(c, 1) / Ratio(Weight(present => (present >> cause & 1) == 1), total)).ShouldBe(1, 1e-12);
        }

        var denominator = BigInteger.Pow(Unit, Causes + (Findings * (Causes + 1)));
        (posteriors.LogProbability / (BigInteger.Log(total) - BigInteger.Log(denominator))).ShouldBe(1, 1e-12);
        posteriors.Probability.ShouldBeLessThan(1e-36);
    }

    private static int Leak(int f) => 1 + f;

    private static int Link(int c, int f) => (((c * 7) + (f * 3)) % 10) + 1;

    /// <summary>Sum over the wanted combinations of causes, times the common denominator.</summary>
    private BigInteger Weight(Func<int, bool> isWanted)
        => Enumerable.Range(0, 1 << Causes).Where(isWanted).Aggregate(BigInteger.Zero, (sum, present) => sum + Weight(present));

    private BigInteger Weight(int present)
    {
        var weight = BigInteger.One;
        for (var c = 0; c < Causes; c++)
        {
            weight *= (present >> c & 1) == 1 ? _priors[c] : Unit - _priors[c];
        }

        for (var f = 0; f < Findings; f++)
        {
            BigInteger none = Unit - Leak(f);
            for (var c = 0; c < Causes; c++)
            {
                none *= (present >> c & 1) == 1 ? Unit - Link(c, f) : Unit;
            }

            weight *= BigInteger.Pow(Unit, Causes + 1) - none;
        }

        return weight;
    }

    private static double Ratio(BigInteger part, BigInteger whole) => Math.Exp(BigInteger.Log(part) - BigInteger.Log(whole));
}
