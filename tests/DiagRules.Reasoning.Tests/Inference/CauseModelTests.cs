using CsCheck;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

public class CauseModelTests
{
    private readonly NetworkBuilder _builder = new();

    [Fact]
    public void NothingObserved_LeavesTheShares()
    {
        var (fuse, relay, _) = FuseAndRelay();
        var model = CauseModel.FromShares(_builder.Build(), new Dictionary<int, double> { [fuse] = 6, [relay] = 3 }, unlisted: 1, coexistence: 0.05);

        var weighing = model.Weigh(model.NewEvidence());

        weighing.Of(fuse).ShouldBe(0.6, 1e-12);
        weighing.Of(relay).ShouldBe(0.3, 1e-12);
        weighing.Unlisted.ShouldBe(0.1, 1e-12);
        weighing.LogProbability.ShouldBe(0, 1e-12);
    }

    [Fact]
    public void OtherShares_WeighTheSameNetworkOnTheSamePlans()
    {
        var (fuse, relay, lamp) = FuseAndRelay();
        var network = _builder.Build();
        var own = CauseModel.FromShares(network, new Dictionary<int, double> { [fuse] = 6, [relay] = 3 }, unlisted: 1, coexistence: 0.05);
        var evidence = own.NewEvidence();
        evidence.Observe(lamp, 1);
        own.Weigh(evidence);
        var plans = own.Engine.CachedPlans;

        var complaint = own.WithShares(new Dictionary<int, double> { [relay] = 4 }, unlisted: 1);
        var weighing = complaint.Weigh(evidence);

        weighing.Of(fuse).ShouldBe(0);
        var fresh = CauseModel.FromShares(network, new Dictionary<int, double> { [fuse] = 0, [relay] = 4 }, unlisted: 1, coexistence: 0.05).Weigh(evidence);
        weighing.Confidences.ToArray().ShouldBe(fresh.Confidences.ToArray());
        weighing.Unlisted.ShouldBe(fresh.Unlisted);
        complaint.Engine.CachedPlans.ShouldBe(plans);
    }

    [Fact]
    public void ObservationThatNothingProduces_IsNamedAndLeftOut()
    {
        var (fuse, relay, lamp) = FuseAndRelay();
        var smoke = _builder.AddGraded("smoke", 2, [1, 0], Contribution.OfLaterGrades(fuse, [0.0]));
        var model = CauseModel.FromShares(_builder.Build(), new Dictionary<int, double> { [fuse] = 6, [relay] = 3 }, unlisted: 1, coexistence: 0.05);
        var evidence = model.NewEvidence();
        evidence.Observe(lamp, 1);
        var before = model.Weigh(evidence);

        evidence.Observe(smoke, 1);
        var weighing = model.Weigh(evidence);

        weighing.LeftOut.ShouldBe([smoke]);
        weighing.Confidences.ToArray().ShouldBe(before.Confidences.ToArray());
    }

    [Fact]
    public void EveryCauseRuledOutWithNothingUnlisted_LeavesOutTheRuleOutOfTheLikeliestCause()
    {
        var (fuse, relay, _) = FuseAndRelay();
        var model = CauseModel.FromShares(_builder.Build(), new Dictionary<int, double> { [fuse] = 1, [relay] = 3 }, unlisted: 0, coexistence: 0.05);
        var evidence = model.NewEvidence();
        evidence.RuleOut(relay);
        evidence.RuleOut(fuse);

        var weighing = model.Weigh(evidence);

        weighing.LeftOut.ShouldBe([relay]);
        weighing.Of(relay).ShouldBe(1);
    }

    [Fact]
    public void RepairsThatRuleOutEverything_AreLeftOutAndSaidSo()
    {
        var (fuse, relay, _) = FuseAndRelay();
        var model = CauseModel.FromShares(_builder.Build(), new Dictionary<int, double> { [fuse] = 1, [relay] = 3 }, unlisted: 0, coexistence: 0.05);
        var evidence = model.NewEvidence();
        evidence.RepairFailed(fuse);
        evidence.RepairFailed(relay);

        var weighing = model.Weigh(evidence);

        weighing.AreRepairsLeftOut.ShouldBeTrue();
        weighing.LeftOut.ShouldBeEmpty();
        weighing.Of(relay).ShouldBe(0.75, 1e-12);
    }

    [Fact]
    public void RepairTriedTwice_CountsTwice()
    {
        var (fuse, relay, _) = FuseAndRelay();
        var model = CauseModel.FromShares(_builder.Build(), new Dictionary<int, double> { [fuse] = 1, [relay] = 1 }, unlisted: 0, coexistence: 0.05);
        var evidence = model.NewEvidence();
        evidence.RepairFailed(fuse, 0.5);
        evidence.RepairFailed(fuse, 0.5);

        model.Weigh(evidence).Of(fuse).ShouldBe(0.25 / 1.25, 1e-12);

        // 10 log10 of 0.25 : 1, the likelihood of "the complaint stayed" with the fuse primary to that without.
        var weight = model.Explain(evidence, fuse).ShouldHaveSingleItem();
        weight.Node.ShouldBeNull();
        weight.Decibans.ShouldBe(10 * Math.Log10(0.25), 1e-9);
    }

    [Fact]
    public void WeightOfOneObservation_IsTheRatioOfItsLikelihoods()
    {
        // Two causes and nothing else; Good (1950): 10 log10 (0.8 / 0.1), by hand.
        var fuse = _builder.AddCause("fuse-blown", 0.5);
        var relay = _builder.AddCause("relay-stuck", 0.5);
        var lamp = _builder.AddTable("lamp", 2, [fuse, relay], [0.5, 0.5, 0.9, 0.1, 0.2, 0.8, 0.2, 0.8]);
        var model = CauseModel.FromShares(_builder.Build(), new Dictionary<int, double> { [fuse] = 1, [relay] = 1 }, unlisted: 0, coexistence: 1e-12);
        var evidence = model.NewEvidence();
        evidence.Observe(lamp, 1);

        model.Explain(evidence, fuse).ShouldHaveSingleItem().Decibans.ShouldBe(9.0308998699, 1e-8);
        model.Explain(evidence, relay).ShouldHaveSingleItem().Decibans.ShouldBe(-9.0308998699, 1e-8);
    }

    [Fact]
    public void CopyOfEvidence_WeighsTheSameAndStaysApart()
        => Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var small = SmallModel.Mixed(seed);
                var model = CauseModel.FromShares(small.Network, small.RandomShares(), unlisted: 2, coexistence: 0.1);
                var evidence = model.NewEvidence();
                var likelihoods = small.RandomEvidence();
                for (var node = 0; node < likelihoods.Length; node++)
                {
                    if (likelihoods[node] is { } values)
                    {
                        evidence.Observe(node, values);
                    }
                }

                evidence.RepairFailed(0, 0.5);
                var before = model.Weigh(evidence);

                var copy = evidence.Copy();
                evidence.Clear();

                var after = model.Weigh(copy);
                after.Confidences.ToArray().ShouldBe(before.Confidences.ToArray());
                after.Unlisted.ShouldBe(before.Unlisted);
                model.Weigh(evidence).LogProbability.ShouldBe(0, 1e-12);
            },
            iter: 50);

    [Fact]
    public void MoreOutcomesThanAllowed_AreCutAndSaidSo()
    {
        var workload = new Workload(causes: 10, effects: 4, findings: 6, seed: 2);
        var model = CauseModel.FromShares(workload.Network, workload.Causes.ToDictionary(cause => cause, _ => 1.0), unlisted: 1, coexistence: 0.05);

        var joint = model.PredictTogether(model.NewEvidence(), workload.Findings, mostOutcomes: 20);

        joint.IsCut.ShouldBeTrue();
        joint.Outcomes.ShouldBeLessThanOrEqualTo(20);
        joint.Nodes.Concat(joint.LeftOut).ShouldBe(workload.Findings);
        var alone = model.Predict(model.NewEvidence(), joint.Nodes[0])[0];
        for (var grade = 0; grade < alone.Grades; grade++)
        {
            var sum = Enumerable.Range(0, joint.Outcomes)
                .Where(outcome => joint.GradeOf(outcome, 0) == grade).Sum(outcome => joint.Given(workload.Causes[0], outcome));
            sum.ShouldBe(alone.Given(workload.Causes[0])[grade], 1e-12);
        }
    }

    [Fact]
    public void FindingsPredictedTogether_AreThosePredictedOneByOne()
    {
        var workload = new Workload(causes: 60, effects: 30, findings: 80, seed: 4);
        var shares = workload.Causes.ToDictionary(cause => cause, cause => 1.0 + (cause % 7));
        var model = CauseModel.FromShares(workload.Network, shares, unlisted: 12, coexistence: 0.05);
        var evidence = model.NewEvidence();
        var seen = workload.RandomEvidence(observed: 12, abnormal: 4, seed: 9);
        foreach (var node in seen.Observed)
        {
            evidence.Observe(node, seen.LikelihoodsOf(node));
        }

        var together = model.Predict(evidence, workload.Findings);

        foreach (var prediction in together)
        {
            var alone = model.Predict(evidence, prediction.Node)[0];
            for (var i = 0; i < model.Causes.Count; i++)
            {
                prediction.At(i).ToArray().ShouldBe(alone.At(i).ToArray(), 1e-10);
            }

            prediction.Overall.ToArray().ShouldBe(alone.Overall.ToArray(), 1e-10);
        }
    }

    [Fact]
    public void CauseWithMoreThanTwoGrades_IsRefused()
    {
        var wear = _builder.AddRoot("wear", [0.8, 0.1, 0.1]);

        Should.Throw<ArgumentException>(() => CauseModel.FromShares(_builder.Build(), new Dictionary<int, double> { [wear] = 1 }, 1, 0.05))
            .Message.ShouldStartWith("'wear' has 3 grades and 0 parents; expected a cause: the grades absent and present, and no parents.");
    }

    [Fact]
    public void RulingOutAFinding_IsRefused()
    {
        var (fuse, relay, lamp) = FuseAndRelay();
        var model = CauseModel.FromShares(_builder.Build(), new Dictionary<int, double> { [fuse] = 1, [relay] = 1 }, 1, 0.05);

        Should.Throw<ArgumentException>(() => model.NewEvidence().RuleOut(lamp))
            .Message.ShouldStartWith("'lamp' is no cause of this model; expected one of its 2 causes.");
    }

    [Fact]
    public void SharesThatAreAllZero_AreRefused()
    {
        var (fuse, _, _) = FuseAndRelay();

        Should.Throw<ArgumentException>(() => CauseModel.FromShares(_builder.Build(), new Dictionary<int, double> { [fuse] = 0 }, 1, 0.05))
            .Message.ShouldStartWith("Every share is 0; expected at least one cause with a share above 0.");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1.5)]
    [InlineData(double.NaN)]
    public void CoexistenceOutOfRange_IsRefused(double coexistence)
    {
        var (fuse, _, _) = FuseAndRelay();

        Should.Throw<ArgumentOutOfRangeException>(() => CauseModel.FromShares(_builder.Build(), new Dictionary<int, double> { [fuse] = 1 }, 1, coexistence));
    }

    private (int Fuse, int Relay, int Lamp) FuseAndRelay()
    {
        var fuse = _builder.AddCause("fuse-blown", 0.5);
        var relay = _builder.AddCause("relay-stuck", 0.5);
        return (fuse, relay, _builder.AddGraded("lamp", 2, [0.99, 0.01], Contribution.OfLaterGrades(fuse, [0.9]), Contribution.OfLaterGrades(relay, [0.2])));
    }
}
