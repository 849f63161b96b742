using CsCheck;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

public class InferenceEngineTests
{
    [Fact]
    public void OrderOfObservations_NeverMatters()
        => Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var model = SmallModel.Mixed(seed);
                var likelihoods = model.RandomEvidence();
                var forward = EnumerationAgreementTests.EvidenceOf(model, likelihoods);
                var backward = new Evidence(model.Network);
                for (var node = likelihoods.Length - 1; node >= 0; node--)
                {
                    if (likelihoods[node] is { } values)
                    {
                        backward.Observe(node, values);
                    }
                }

                ShouldBeIdentical(new InferenceEngine(model.Network).Infer(forward), new InferenceEngine(model.Network).Infer(backward), model.Network);
            },
            iter: 100);

    [Fact]
    public void LikelihoodsOfOne_ChangeNothing()
        => Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var model = SmallModel.Mixed(seed);
                var evidence = EnumerationAgreementTests.EvidenceOf(model, model.RandomEvidence());
                var engine = new InferenceEngine(model.Network);
                var before = engine.Infer(evidence);

                var free = Enumerable.Range(0, model.Network.Count).FirstOrDefault(node => !evidence.IsObserved(node));
                if (!evidence.IsObserved(free))
                {
                    evidence.Observe(free, Enumerable.Repeat(1.0, model.Network.GradesOf(free)).ToArray());
                }

                ShouldBeIdentical(engine.Infer(evidence), before, model.Network);
            },
            iter: 100);

    [Fact]
    public void ScaledLikelihoods_ScaleTheProbabilityAndNothingElse()
        => Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var model = SmallModel.Mixed(seed);
                var likelihoods = model.RandomEvidence();
                var scaled = likelihoods.Select(values => values?.Select(value => value * 1e200).ToArray()).ToArray();
                var engine = new InferenceEngine(model.Network);

                var plain = engine.Infer(EnumerationAgreementTests.EvidenceOf(model, likelihoods));
                var large = engine.Infer(EnumerationAgreementTests.EvidenceOf(model, scaled));

                large.IsImpossible.ShouldBe(plain.IsImpossible);
                if (!plain.IsImpossible)
                {
                    var factors = likelihoods.Count(values => values is not null);
                    (large.LogProbability - plain.LogProbability).ShouldBe(factors * 200 * Math.Log(10), 1e-9);
                    for (var node = 0; node < model.Network.Count; node++)
                    {
                        large.Of(node).ToArray().ShouldBe(plain.Of(node).ToArray(), 1e-12);
                    }
                }
            },
            iter: 100);

    [Fact]
    public void PosteriorsOfEachNode_AddUpToOne()
        => Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var model = SmallModel.Wide(seed);
                var posteriors = new InferenceEngine(model.Network).Infer(EnumerationAgreementTests.EvidenceOf(model, model.RandomEvidence()));
                for (var node = 0; node < model.Network.Count && !posteriors.IsImpossible; node++)
                {
                    posteriors.Of(node).ToArray().Sum().ShouldBe(1, 1e-12);
                }
            },
            iter: 50);

    [Fact]
    public void EightThreadsOnOneEngine_GetTheDigitsOfOne()
    {
        var workload = new Workload(causes: 60, effects: 30, findings: 80, seed: 11);
        var scenes = Enumerable.Range(0, 40).Select(i => workload.RandomEvidence(observed: 12, abnormal: 5, seed: i)).ToArray();
        var alone = scenes.Select(scene => Digits(new InferenceEngine(workload.Network), scene, workload.Causes)).ToArray();
        var shared = new InferenceEngine(workload.Network, new InferenceLimits { CachedPlans = 8 });

        Parallel.For(0, 400, new ParallelOptions { MaxDegreeOfParallelism = 8 }, i
            => Digits(shared, scenes[i % scenes.Length], workload.Causes).ShouldBe(alone[i % scenes.Length]));

        shared.CachedPlans.ShouldBeInRange(1, 8 + 8);
    }

    [Fact]
    public void HundredsOfUnlikelyObservations_DoNotUnderflow()
    {
        // One cause, 400 findings that each speak for it by 1000 to 1, and as many that speak against it: the odds stay what they were.
        var builder = new NetworkBuilder();
        var cause = builder.AddCause("cause", 0.25);
        var findings = Enumerable.Range(0, 800)
            .Select(i => builder.AddTable($"f{i}", 2, [cause], i < 400 ? [0.999999, 0.000001, 0.999, 0.001] : [0.999, 0.001, 0.999999, 0.000001]))
            .ToArray();
        var evidence = new Evidence(builder.Build());
        Array.ForEach(findings, finding => evidence.Observe(finding, [0, 1]));

        var posteriors = new InferenceEngine(evidence.Network).Infer(evidence, cause);

        posteriors.Of(cause, 1).ShouldBe(0.25, 1e-10);
        posteriors.LogProbability.ShouldBe(400 * Math.Log(1e-9), 1e-8);
    }

    [Fact]
    public void HundredsOfFirstGrades_KeepOneCauseApartFromAnother()
    {
        // P(all 300 | first present) = 0.1^300 and so for the second: below the range of a double, and yet exactly even.
        var builder = new NetworkBuilder();
        int[] causes = [builder.AddCause("first", 1), builder.AddCause("second", 0.5)];
        var findings = Enumerable.Range(0, 600)
            .Select(i => builder.AddGraded($"f{i}", 2, [1, 0], Contribution.OfLaterGrades(causes[i % 2], [0.9])))
            .ToArray();
        var evidence = new Evidence(builder.Build());
        Array.ForEach(findings, finding => evidence.Observe(finding, 0));
        evidence.Observe(causes[1], [0, 1]);

        var posteriors = new InferenceEngine(evidence.Network).Infer(evidence, causes);

        posteriors.LogProbability.ShouldBe((600 * Math.Log(0.1)) + Math.Log(0.5), 1e-9);
        posteriors.Of(causes[0], 1).ShouldBe(1);
    }

    [Fact]
    public void FindingsAtTheirFirstGrade_CostNoTables()
    {
        var workload = new Workload(causes: 60, effects: 30, findings: 80, seed: 3);
        var engine = new InferenceEngine(workload.Network);
        var few = engine.Estimate(workload.RandomEvidence(observed: 12, abnormal: 5, seed: 1)).TableCells;
        var all = engine.Estimate(workload.RandomEvidence(observed: 80, abnormal: 5, seed: 1)).TableCells;

        all.ShouldBeLessThan(6 * few);
    }

    [Fact]
    public void PosteriorsOfAllNodesOfADenseNetwork_NeedNoTableOverAllOfThem()
    {
        var workload = new Workload(causes: 60, effects: 30, findings: 80, seed: 11);
        var engine = new InferenceEngine(workload.Network);
        var evidence = workload.RandomEvidence(observed: 12, abnormal: 5, seed: 0);

        var all = engine.Infer(evidence);

        foreach (var node in Enumerable.Range(0, workload.Network.Count).Where(node => node % 10 == 3))
        {
            all.Of(node).ToArray().ShouldBe(engine.Infer(evidence, node).Of(node).ToArray(), 1e-12);
        }
    }

    [Fact]
    public void KnownShapeOfEvidence_MakesNoNewPlan()
    {
        var workload = new Workload(causes: 20, effects: 8, findings: 20, seed: 5);
        var engine = new InferenceEngine(workload.Network);
        var evidence = workload.RandomEvidence(observed: 8, abnormal: 3, seed: 2);
        engine.LogProbability(evidence);
        var plans = engine.CachedPlans;

        evidence.Observe(workload.Causes[0], 0);
        evidence.Observe(workload.Causes[1], [0.2, 0.7]);
        engine.LogProbability(evidence);

        engine.CachedPlans.ShouldBe(plans);
    }

    [Fact]
    public void PlansBeyondTheLimit_LeaveTheCacheOldestFirst()
    {
        var workload = new Workload(causes: 20, effects: 8, findings: 20, seed: 5);
        var engine = new InferenceEngine(workload.Network, new InferenceLimits { CachedPlans = 10 });

        for (var i = 0; i < 60; i++)
        {
            engine.LogProbability(workload.RandomEvidence(observed: 8, abnormal: 3, seed: i));
        }

        engine.CachedPlans.ShouldBeInRange(5, 10);
    }

    [Fact]
    public void DenseNetworkWithSixtyAbnormalFindings_EndsWithTheBudget()
    {
        var builder = new NetworkBuilder();
        var causes = Enumerable.Range(0, 60).Select(i => builder.AddCause($"c{i}", 0.02)).ToArray();
        var findings = Enumerable.Range(0, 60)
            .Select(f => builder.AddGraded($"f{f}", 3, [0.98, 0.01, 0.01], [.. causes
                .Where(c => (c + f) % 3 > 0).Select(c => Contribution.OfLaterGrades(c, [0.3, 0.3]))]))
            .ToArray();
        var engine = new InferenceEngine(builder.Build());
        var evidence = new Evidence(engine.Network);
        Array.ForEach(findings, finding => evidence.Observe(finding, 1));

        var exception = Should.Throw<InferenceBudgetException>(() => engine.Infer(evidence, causes));

        exception.AllowedCells.ShouldBe(InferenceLimits.Default.TableCells);
        exception.Estimate.TableCells.ShouldBeGreaterThan(1e9);
        exception.Estimate.ShouldBe(engine.Estimate(evidence));
        exception.Message.ShouldStartWith("These observations need more than ");
        exception.Message.ShouldContain("'InferenceLimits.TableCells' allows 4194304. Raise it, withdraw");
    }

    [Fact]
    public void TenAbnormalFindingsOfTwentyCausesEach_AreWithinTheBudget()
    {
        var workload = Workload.TwoLayers(causes: 60, findings: 60, parents: 20, seed: 1);
        var engine = new InferenceEngine(workload.Network);

        engine.Estimate(workload.RandomEvidence(observed: 60, abnormal: 10, seed: 1)).TableCells.ShouldBeLessThan(InferenceLimits.Default.TableCells);
    }

    [Fact]
    public void ImpossibleEvidence_IsAnAnswer()
    {
        var builder = new NetworkBuilder();
        var cause = builder.AddCause("cause", 0.1);
        var finding = builder.AddGraded("finding", 2, [1, 0], Contribution.OfLaterGrades(cause, [0.5]));
        var evidence = new Evidence(builder.Build());
        evidence.Observe(finding, 1);
        evidence.Observe(cause, 0);

        var posteriors = new InferenceEngine(evidence.Network).Infer(evidence);

        posteriors.IsImpossible.ShouldBeTrue();
        posteriors.Probability.ShouldBe(0);
        posteriors.Of(cause).ToArray().ShouldBe([0.0, 0.0]);
    }

    [Fact]
    public void NodeThatWasNotAskedFor_IsRefusedByName()
    {
        var builder = new NetworkBuilder();
        var cause = builder.AddCause("fuse-blown", 0.1);
        var other = builder.AddCause("relay-stuck", 0.1);
        var evidence = new Evidence(builder.Build());

        var posteriors = new InferenceEngine(evidence.Network).Infer(evidence, cause);

        Should.Throw<ArgumentException>(() => posteriors.Of(other)).Message.ShouldStartWith("'relay-stuck' was not asked for; name it in the question.");
    }

    private static double[] Digits(InferenceEngine engine, Evidence evidence, int[] nodes)
    {
        var posteriors = engine.Infer(evidence, nodes);
        return [posteriors.LogProbability, .. nodes.SelectMany(node => posteriors.Of(node).ToArray())];
    }

    private static void ShouldBeIdentical(Posteriors actual, Posteriors expected, Network network)
    {
        actual.LogProbability.ShouldBe(expected.LogProbability);
        for (var node = 0; node < network.Count; node++)
        {
            actual.Of(node).ToArray().ShouldBe(expected.Of(node).ToArray());
        }
    }
}
