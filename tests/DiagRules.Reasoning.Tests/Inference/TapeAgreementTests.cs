using CsCheck;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>Two ways to the same answer: tapes against enumeration, and on networks too large for that against trees of tables.</summary>
public class TapeAgreementTests
{
    private static readonly InferenceLimits Tapes = new() { Kinds = PlanKinds.Tapes };
    private static readonly InferenceLimits Buckets = new() { Kinds = PlanKinds.Buckets };

    [Fact]
    public void PosteriorsOfRoots_AreThoseOfEnumeration()
        => Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var model = seed % 3 == 0 ? SmallModel.Wide(seed) : SmallModel.Mixed(seed);
                var oracle = new Enumeration(model);
                var likelihoods = model.RandomEvidence(part: 0.25 * (1 + (seed % 3)));
                var total = oracle.Probability(likelihoods);
                int[] roots = [.. Enumerable.Range(0, model.Nodes.Count).Where(node => model.Nodes[node].Parents.Length == 0)];

                var limits = new InferenceLimits { Kinds = PlanKinds.Tapes, DearCells = seed % 2 == 0 ? 0 : 1 << 14 };
                var posteriors = new InferenceEngine(model.Network, limits).Infer(EnumerationAgreementTests.EvidenceOf(model, likelihoods), roots);

                posteriors.Probability.ShouldBe(total, 1e-10 * Math.Max(total, 1));
                foreach (var root in roots)
                {
                    var expected = Enumerable.Range(0, model.Nodes[root].Grades)
                        .Select(g => total == 0 ? 0 : oracle.Probability(likelihoods, (root, g)) / total);
                    posteriors.Of(root).ToArray().ShouldBe(expected.ToArray(), 1e-10);
                }
            },
            iter: 300);

    [Theory]
    [InlineData(12, 5)]
    [InlineData(40, 10)]
    [InlineData(80, 8)]
    public void PosteriorsOfALargeNetwork_AreTheSameWithTapesAndWithTables(int observed, int abnormal)
    {
        var workload = new Workload(causes: 60, effects: 30, findings: 80, seed: 7);
        var tapes = new InferenceEngine(workload.Network, Tapes);
        var buckets = new InferenceEngine(workload.Network, Buckets);
        for (var seed = 0; seed < 15; seed++)
        {
            var evidence = Softened(workload.RandomEvidence(observed, abnormal, seed), seed);

            var actual = tapes.Infer(evidence, workload.Causes);

            var expected = buckets.Infer(evidence, workload.Causes);
            actual.LogProbability.ShouldBe(expected.LogProbability, 1e-10);
            foreach (var cause in workload.Causes)
            {
                (actual.Of(cause, 1) / expected.Of(cause, 1)).ShouldBe(1, 1e-11);
            }
        }
    }

    [Fact]
    public void PredictionsOnALargeNetwork_AreTheSameWithTapesAndWithTables()
    {
        var workload = new Workload(causes: 40, effects: 15, findings: 50, seed: 5);
        var (tapes, buckets) = (ModelOf(workload, Tapes), ModelOf(workload, Buckets));
        for (var seed = 0; seed < 6; seed++)
        {
            var evidence = EvidenceFor(tapes, Softened(workload.RandomEvidence(observed: 12, abnormal: 4, seed), seed));
            int[] nodes = [.. workload.Findings.Skip(seed).Take(4)];

            var actual = tapes.Predict(evidence, workload.Findings);
            var together = tapes.PredictTogether(evidence, nodes, mostOutcomes: 64);

            var expected = buckets.Predict(evidence, workload.Findings);
            var expectedTogether = buckets.PredictTogether(evidence, nodes, mostOutcomes: 64);
            for (var position = 0; position < workload.Causes.Length; position++)
            {
                for (var i = 0; i < actual.Count; i++)
                {
                    actual[i].At(position).ToArray().ShouldBe(expected[i].At(position).ToArray(), 1e-10);
                }

                for (var outcome = 0; outcome < together.Outcomes; outcome++)
                {
                    together.At(position, outcome).ShouldBe(expectedTogether.At(position, outcome), 1e-10);
                }
            }
        }
    }

    [Fact]
    public void SoftObservationThatHardlyFits_IsPredictedGradeByGrade()
    {
        // Leaving this observation out makes the rest 10^13 times likelier: differences of such numbers would have no digit left for the later grades.
        var builder = new NetworkBuilder();
        int[] causes = [builder.AddCause("first", 0.5), builder.AddCause("second", 0.5)];
        var finding = builder.AddGraded("finding", 4, [1, 0, 0, 0], [.. causes.Select(cause => Contribution.OfLaterGrades(cause, [1e-14, 1e-14, 1e-14]))]);
        var other = builder.AddGraded("other", 2, [0.9, 0.1], [.. causes.Select(cause => Contribution.OfLaterGrades(cause, [0.2]))]);
        var model = CauseModel.FromShares(builder.Build(), causes.ToDictionary(cause => cause, _ => 1.0), unlisted: 0, coexistence: 1e-6, Tapes);
        var evidence = model.NewEvidence();
        evidence.Observe(finding, [0, 1, 1, 2]);

        var predictions = model.Predict(evidence, finding, other);
        var together = model.PredictTogether(evidence, [finding, other]);

        // A second cause beside the first changes this by less than 1e-5.
        predictions[0].Given(causes[0]).ToArray().ShouldBe([0, 0.25, 0.25, 0.5], 1e-5);
        predictions[0].Given(causes[0])[1].ShouldBe(together.Given(causes[0], 2) + together.Given(causes[0], 3), 1e-10);
        predictions[1].Given(causes[0]).ToArray().ShouldBe([0.72, 0.28], 1e-5);
    }

    [Fact]
    public void SixteenGrades_AreTooManyForRunsAndEnterOneByOne()
    {
        double[] Rising(double part) => [1 - part, .. Enumerable.Repeat(part / 15, 15)];
        var builder = new NetworkBuilder();
        int[] causes = [builder.AddCause("first", 0.2), builder.AddCause("second", 0.3), builder.AddCause("third", 0.1)];
        var finding = builder.AddGraded("finding", 16, Rising(0.1), [.. causes.Select(cause => Contribution.OfLaterGrades(cause, Rising(0.6)[1..]))]);
        var evidence = new Evidence(builder.Build());
        evidence.Observe(finding, [.. Enumerable.Range(0, 16).Select(g => g < 8 ? 0.1 : 0.9)]);

        var posteriors = new InferenceEngine(evidence.Network, Tapes).Infer(evidence, causes);

        // The likelihood is 0.9 - 0.8 * P(finding < 8), and P(finding < 8) is a product.
        double Below(double part) => 1 - (part * 8 / 15);
        double Likelihood(int present) => 0.9 - (0.8 * Below(0.1) * Math.Pow(Below(0.6), int.PopCount(present)));
        double Weight(int present) => (present % 2 == 1 ? 0.2 : 0.8) * ((present & 2) > 0 ? 0.3 : 0.7) * (present > 3 ? 0.1 : 0.9) * Likelihood(present);
        var total = Enumerable.Range(0, 8).Sum(Weight);
        posteriors.Probability.ShouldBe(total, 1e-12);
        posteriors.Of(causes[0], 1).ShouldBe(Enumerable.Range(0, 8).Where(present => present % 2 == 1).Sum(Weight) / total, 1e-12);
    }

    private static CauseModel ModelOf(Workload workload, InferenceLimits limits)
        => CauseModel.FromShares(workload.Network, workload.Causes.ToDictionary(cause => cause, cause => 1.0 + (cause % 5)), 9, 0.05, limits);

    private static CauseEvidence EvidenceFor(CauseModel model, Evidence seen)
    {
        var evidence = model.NewEvidence();
        foreach (var node in seen.Observed)
        {
            evidence.Observe(node, seen.LikelihoodsOf(node));
        }

        return evidence;
    }

    /// <summary>Every third observation as of someone who is right nine times out of ten.</summary>
    private static Evidence Softened(Evidence evidence, int seed)
    {
        foreach (var node in evidence.Observed.Where(node => (node + seed) % 3 == 0).ToArray())
        {
            var likelihoods = evidence.LikelihoodsOf(node).ToArray();
            evidence.Observe(node, Array.ConvertAll(likelihoods, likelihood => (0.9 * likelihood) + (0.1 / likelihoods.Length)));
        }

        return evidence;
    }
}
