using CsCheck;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>Random primary-cause models, with every kind of observation, against enumeration of their definition.</summary>
public class CauseModelAgreementTests
{
    private const double Tolerance = 1e-10;

    [Fact]
    public void Confidences_AreThoseOfEnumeration() => Sample(
        scene =>
        {
            var weighing = scene.Model.Weigh(scene.Evidence);

            var weights = Enumerable.Range(0, scene.Causes + 1).Select(z => scene.Oracle.Weight(z, scene.Likelihoods) * scene.SurvivalOf(z)).ToArray();
            for (var cause = 0; cause < scene.Causes; cause++)
            {
                weighing.Of(cause).ShouldBe(weights[cause] / weights.Sum(), Tolerance);
            }

            weighing.Unlisted.ShouldBe(weights[^1] / weights.Sum(), Tolerance);
            Math.Exp(weighing.LogProbability).ShouldBe(weights.Sum(), Tolerance * Math.Max(weights.Sum(), 1));
        },
        iter: 400);

    [Fact]
    public void AlsoPresent_IsThatOfEnumeration() => Sample(scene =>
    {
        var weighing = scene.Model.Weigh(scene.Evidence);
        for (var i = 0; i < scene.Causes; i++)
        {
            var weight = scene.Oracle.Weight(i, scene.Likelihoods);
            if (scene.Model.PriorOf(i) > 0)
            {
                var expected = Enumerable.Range(0, scene.Causes)
                    .Select(j => weight == 0 ? 0 : scene.Oracle.Weight(i, scene.Oracle.With(scene.Likelihoods, j, 1)) / weight);
                weighing.AlsoPresent(i).ToArray().ShouldBe(expected.ToArray(), Tolerance);
            }
        }
    });

    [Fact]
    public void Predictions_AreThoseOfEnumeration() => Sample(scene =>
    {
        int[] nodes = [.. Enumerable.Range(0, scene.Small.Nodes.Count)];
        var predictions = scene.Model.Predict(scene.Evidence, nodes);
        foreach (var prediction in predictions)
        {
            for (var z = 0; z <= scene.Causes; z++)
            {
                var weight = scene.Oracle.Weight(z, scene.Likelihoods);
                for (var g = 0; g < prediction.Grades && weight > 0; g++)
                {
                    var actual = z == scene.Causes ? prediction.GivenUnlisted[g] : prediction.Given(z)[g];
                    actual.ShouldBe(scene.Oracle.Weight(z, scene.Oracle.With(scene.Likelihoods, prediction.Node, g)) / weight, Tolerance);
                }
            }

            prediction.Overall.ToArray().Sum().ShouldBe(1, Tolerance);
        }
    });

    [Fact]
    public void JointPredictions_AreThoseOfEnumeration() => Sample(scene =>
    {
        int[] nodes = [scene.Small.Nodes.Count - 1, scene.Small.Next(scene.Small.Nodes.Count - 1)];
        var joint = scene.Model.PredictTogether(scene.Evidence, nodes);
        joint.IsCut.ShouldBeFalse();
        for (var outcome = 0; outcome < joint.Outcomes; outcome++)
        {
            var entered = scene.Oracle.With(scene.Likelihoods, nodes[0], joint.GradeOf(outcome, 0));
            entered = scene.Oracle.With(entered, nodes[1], joint.GradeOf(outcome, 1));
            for (var z = 0; z <= scene.Causes; z++)
            {
                if (scene.Oracle.Weight(z, scene.Likelihoods) is > 0 and var weight)
                {
                    var actual = z == scene.Causes ? joint.GivenUnlisted(outcome) : joint.Given(z, outcome);
                    actual.ShouldBe(scene.Oracle.Weight(z, entered) / weight, Tolerance);
                }
            }
        }

        Enumerable.Range(0, joint.Outcomes).Sum(joint.Overall).ShouldBe(1, Tolerance);
    });

    [Fact]
    public void WeightsOfEvidence_AreThoseOfEnumeration() => Sample(scene =>
    {
        var cause = scene.Small.Next(scene.Causes);
        var (withFor, withAgainst) = scene.Sides(cause, scene.Likelihoods);
        foreach (var observation in scene.Model.Explain(scene.Evidence, cause).Where(weight => weight.Node is not null))
        {
            var (restFor, restAgainst) = scene.Sides(cause, PrimaryEnumeration.Without(scene.Likelihoods, observation.Node!.Value));
            var expected = restFor == 0 || restAgainst == 0 ? 0 : 10 * Math.Log10(withFor / restFor / (withAgainst / restAgainst));
            if (double.IsInfinity(expected))
            {
                observation.Decibans.ShouldBe(expected);
            }
            else
            {
                observation.Decibans.ShouldBe(expected, 1e-7);
            }
        }
    });

    [Fact]
    public void ImpossibleObservations_LeaveTheSmallestSetThatMakesTheRestMostProbable()
    {
        var met = 0;
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var scene = new Scene(seed, unlisted: 0);
                if (scene.Oracle.Total(scene.Likelihoods) > 0)
                {
                    return;
                }

                var leftOut = scene.Model.Weigh(scene.Evidence).LeftOut;

                var (size, probability) = scene.BestRest();
                leftOut.Count.ShouldBe(size);
                scene.Oracle.Total(PrimaryEnumeration.Without(scene.Likelihoods, [.. leftOut])).ShouldBe(probability, Tolerance);
                Interlocked.Increment(ref met);
            },
            iter: 200);
        met.ShouldBeGreaterThan(20);
    }

    [Fact]
    public void AbsoluteProbabilities_AreThoseOfEnumeration()
        => Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var small = SmallModel.Mixed(seed);
                var priors = Enumerable.Range(0, small.Causes).ToDictionary(cause => cause, cause => small.Nodes[cause].Given([])[1]);
                var model = CauseModel.FromProbabilities(small.Network, priors, EnumerationAgreementTests.LimitsOf(seed));
                var likelihoods = small.RandomEvidence();
                var oracle = new Enumeration(small);
                var total = oracle.Probability(likelihoods);
                var evidence = model.NewEvidence();
                Scene.Enter(evidence, likelihoods);
                evidence.RepairFailed(0, 0.7);

                var weighing = model.Weigh(evidence);

                weighing.Unlisted.ShouldBe(0);
                weighing.LeftOut.Count.ShouldBe(total == 0 ? Math.Max(weighing.LeftOut.Count, 1) : 0);
                for (var cause = 0; cause < small.Causes && total > 0; cause++)
                {
                    var expected = oracle.Probability(likelihoods, (cause, 1)) / total;
                    weighing.Of(cause).ShouldBe(expected * (cause == 0 ? 0.3 : 1), Tolerance);
                }
            },
            iter: 200);

    private static void Sample(Action<Scene> check, int iter = 150)
        => Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var scene = new Scene(seed, unlisted: seed % 7);
                if (scene.IsPossible)
                {
                    check(scene);
                }
            },
            iter: iter);

    /// <summary>A random model with evidence, and the oracle for it.</summary>
    private sealed class Scene
    {
        private readonly double[] _survival;

        public Scene(int seed, double unlisted)
        {
            Small = seed % 9 == 0 ? SmallModel.Wide(seed) : SmallModel.Mixed(seed);
            var shares = Small.RandomShares();
            var coexistence = seed % 5 == 0 ? 1 : 0.05 * (1 + (seed % 4));
            Model = CauseModel.FromShares(Small.Network, shares, unlisted, coexistence, EnumerationAgreementTests.LimitsOf(seed));
            Oracle = new PrimaryEnumeration(Small, new Enumeration(Small), shares, unlisted, coexistence);
            Likelihoods = Small.RandomEvidence();
            _survival = Small.RandomSurvival();
            Evidence = Model.NewEvidence();
            Enter(Evidence, Likelihoods);
            for (var cause = 0; cause < Causes; cause++)
            {
                Evidence.RepairFailed(cause, 1 - _survival[cause]);
            }
        }

        public SmallModel Small { get; }

        public int Causes => Small.Causes;

        public CauseModel Model { get; }

        public PrimaryEnumeration Oracle { get; }

        public double[]?[] Likelihoods { get; }

        public CauseEvidence Evidence { get; }

        public bool IsPossible => Enumerable.Range(0, Causes + 1).Sum(z => Oracle.Weight(z, Likelihoods) * SurvivalOf(z)) > 0;

        public double SurvivalOf(int z) => z < Causes ? _survival[z] : 1;

        public (double For, double Against) Sides(int cause, double[]?[] likelihoods)
        {
            var weights = Enumerable.Range(0, Causes + 1).Select(z => Oracle.Weight(z, likelihoods) * SurvivalOf(z)).ToArray();
            return (weights[cause], weights.Where((_, z) => z != cause).Sum());
        }

        /// <summary>Size of the smallest set of observations to leave out, and the largest probability of what such a set leaves.</summary>
        public (int Size, double Probability) BestRest()
        {
            int[] observed = [.. Evidence.Observed];
            return Enumerable.Range(0, 1 << observed.Length)
                .Select(set => observed.Where((_, i) => (set >> i & 1) == 1).ToArray())
                .Select(set => (Size: set.Length, Probability: Oracle.Total(PrimaryEnumeration.Without(Likelihoods, set))))
                .Where(rest => rest.Probability > 0)
                .GroupBy(rest => rest.Size)
                .OrderBy(group => group.Key)
                .Select(group => (group.Key, group.Max(rest => rest.Probability)))
                .First();
        }

        public static void Enter(CauseEvidence evidence, double[]?[] likelihoods)
        {
            for (var node = 0; node < likelihoods.Length; node++)
            {
                if (likelihoods[node] is { } values)
                {
                    evidence.Observe(node, values);
                }
            }
        }
    }
}
