using CsCheck;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>Random networks against enumeration of all combinations.</summary>
public class EnumerationAgreementTests
{
    private const double Tolerance = 1e-10;

    [Fact]
    public void PosteriorsOfAllNodes_AreThoseOfEnumeration()
        => Gen.Int[0, 1_000_000].Sample(seed => ShouldAgree(SmallModel.Mixed(seed)), iter: 300);

    [Fact]
    public void PosteriorsUnderWideFindings_AreThoseOfEnumeration()
        => Gen.Int[0, 1_000_000].Sample(seed => ShouldAgree(SmallModel.Wide(seed)), iter: 60);

    [Fact]
    public void JointsOfTwoNodes_AreThoseOfEnumeration()
        => Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var model = SmallModel.Mixed(seed);
                var likelihoods = model.RandomEvidence();
                var oracle = new Enumeration(model);
                var first = model.Next(model.Nodes.Count);
                var second = (first + 1 + model.Next(model.Nodes.Count - 1)) % model.Nodes.Count;
                var total = oracle.Probability(likelihoods);

                var joint = new InferenceEngine(model.Network, LimitsOf(seed)).Joint(EvidenceOf(model, likelihoods), first, second);

                for (var g = 0; g < model.Nodes[first].Grades; g++)
                {
                    for (var h = 0; h < model.Nodes[second].Grades; h++)
                    {
                        joint[g, h].ShouldBe(total == 0 ? 0 : oracle.Probability(likelihoods, (first, g), (second, h)) / total, Tolerance);
                    }
                }
            },
            iter: 150);

    [Fact]
    public void MostProbableGradesOfAllNodes_AreAsProbableAsTheBestCombination()
        => Gen.Int[0, 1_000_000].Sample(
            seed => ShouldFindTheMostProbable(SmallModel.Mixed(seed), everyNode: true), iter: 150);

    [Fact]
    public void MostProbableGradesOfSomeNodes_AreAsProbableAsTheBestCombination()
        => Gen.Int[0, 1_000_000].Sample(
            seed => ShouldFindTheMostProbable(seed % 4 == 0 ? SmallModel.Wide(seed) : SmallModel.Mixed(seed), everyNode: false), iter: 100);

    private static void ShouldAgree(SmallModel model)
    {
        var oracle = new Enumeration(model);
        for (var trial = 0; trial < 6; trial++)
        {
            var likelihoods = model.RandomEvidence(part: 0.2 * (1 + (trial / 2)));
            var total = oracle.Probability(likelihoods);

            var posteriors = new InferenceEngine(model.Network, LimitsOf(trial)).Infer(EvidenceOf(model, likelihoods));

            posteriors.Probability.ShouldBe(total, Tolerance * Math.Max(total, 1));
            posteriors.IsImpossible.ShouldBe(total == 0);
            for (var node = 0; node < model.Nodes.Count && total > 0; node++)
            {
                for (var g = 0; g < model.Nodes[node].Grades; g++)
                {
                    posteriors.Of(node, g).ShouldBe(oracle.Probability(likelihoods, (node, g)) / total, Tolerance);
                }
            }
        }
    }

    private static void ShouldFindTheMostProbable(SmallModel model, bool everyNode)
    {
        var likelihoods = model.RandomEvidence(part: 0.3);
        var oracle = new Enumeration(model);
        var total = oracle.Probability(likelihoods);
        var evidence = EvidenceOf(model, likelihoods);
        int[] nodes = everyNode
            ? [.. Enumerable.Range(0, model.Nodes.Count)]
            : [.. Enumerable.Range(0, model.Nodes.Count).Where(_ => model.Next(2) == 0)];

        var engine = new InferenceEngine(model.Network, LimitsOf(model.Next(2)));
        var explanation = everyNode ? engine.MostProbable(evidence) : engine.MostProbable(evidence, nodes);

        if (total == 0)
        {
            explanation.Grades.ShouldBeEmpty();
            return;
        }

        explanation.Probability.ShouldBe(oracle.LargestProbability(likelihoods, nodes) / total, Tolerance);
        var named = explanation.Grades.Select(pair => (pair.Key, pair.Value)).ToArray();
        (oracle.Probability(likelihoods, named) / total).ShouldBe(explanation.Probability, Tolerance);
    }

    /// <summary>Every second question is treated as if its plan were dear: known roots are fixed, unobserved children entered grade by grade.</summary>
    internal static InferenceLimits LimitsOf(int number) => new()
    {
        DearCells = number % 2 == 0 ? 0 : 1 << 14,
        Kinds = number % 3 == 0 ? PlanKinds.Buckets : PlanKinds.Tapes,
    };

    internal static Evidence EvidenceOf(SmallModel model, double[]?[] likelihoods)
    {
        var evidence = new Evidence(model.Network);
        for (var node = 0; node < likelihoods.Length; node++)
        {
            if (likelihoods[node] is { } values)
            {
                evidence.Observe(node, values);
            }
        }

        return evidence;
    }
}
