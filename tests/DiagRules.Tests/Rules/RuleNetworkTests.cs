using CsCheck;
using DiagRules.Model;
using DiagRules.Model.Cases;

namespace DiagRules.Tests.Rules;

/// <summary>The rule network against an independent evaluator that recomputes every settled state from scratch.</summary>
public sealed class RuleNetworkTests
{
    [Fact]
    public void Random_rules_under_random_observations_settle_as_the_reference_says() =>
        Gen.Select(RandomRulePack.Packs, RandomRulePack.Steps).Sample(
            (pack, steps) =>
            {
                var session = DiagnosisEngine.Compile(pack).Start();
                foreach (var (id, observation) in steps)
                {
                    if (observation is null)
                    {
                        session.Withdraw(id);
                    }
                    else
                    {
                        session.Observe(observation).IsAccepted.ShouldBeTrue();
                    }

                    Compare(pack, session);
                }
            },
            iter: 400);

    private static void Compare(Pack pack, DiagnosisSession session)
    {
        var moment = session.Now();
        var reference = new ReferenceEvaluator(pack, session.Record);

        foreach (var graded in pack.Nodes)
        {
            (moment.Known[graded.Node]?.Grades ?? default).ShouldBe(reference.Lenient(graded.Node), graded.Id);
        }

        moment.Outcomes.Select(line => line.Source).ShouldBe(reference.Advice, ignoreOrder: true);
    }
}
