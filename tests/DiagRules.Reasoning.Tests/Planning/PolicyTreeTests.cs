using CsCheck;
using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

public sealed class PolicyTreeTests
{
    private static readonly PolicyLimits Whole = new() { Depth = 100, Nodes = 100_000, Probability = 0 };

    [Fact]
    public void WholeTree_CostsWhatThePlanExpects() =>
        Situations.Of(Situations.Small).Sample(
            situation =>
            {
                var root = Tree(situation, Whole);

                All(root).Sum(n => n.Reached * n.Cost).ShouldBe(BruteForce.LeastCost(situation), 1e-9);
            },
            iter: 300, threads: 1);

    [Fact]
    public void Branches_AddUpToWhatIsNotCured() =>
        Situations.Of(Situations.Small).Sample(
            situation =>
            {
                foreach (var node in All(Tree(situation, Whole)).Where(n => n.Kind == StepKind.Check))
                {
                    node.Branches.Sum(b => b.Probability).ShouldBe(1, 1e-9);
                    node.Branches.ShouldAllBe(b => Math.Abs(b.Next.Reached - (node.Reached * b.Probability)) < 1e-12);
                }
            },
            iter: 100, threads: 1);

    [Fact]
    public void Limits_CutTheTreeAndSaySo()
    {
        var whole = Tree(Reference.DependentActions, Whole);
        var cut = Tree(Reference.DependentActions, new PolicyLimits { Depth = 1 });
        var few = Tree(Reference.DependentActions, new PolicyLimits { Nodes = 1 });

        All(whole).Select(n => (n.Kind, n.Index, n.IsCut)).ShouldBe([(StepKind.Repair, 2, false), (StepKind.Repair, 0, false)]);
        cut.ShouldSatisfyAllConditions(n => n.IsCut.ShouldBeTrue(), n => n.Branches.ShouldBeEmpty(), n => n.ExpectedCost.ShouldBe(1.45, 1e-9));
        few.ShouldSatisfyAllConditions(n => n.IsCut.ShouldBeTrue(), n => n.Branches.ShouldBeEmpty());
    }

    [Fact]
    public void LimitOutOfRange_IsRefused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => Tree(Reference.DependentActions, new PolicyLimits { Probability = double.NaN }));

    private static PolicyNode Tree(Situation situation, PolicyLimits limits) =>
        Planner.PolicyTree(situation, limits, cancellationToken: TestContext.Current.CancellationToken);

    private static IEnumerable<PolicyNode> All(PolicyNode node) => node.Branches.SelectMany(b => All(b.Next)).Prepend(node);
}
