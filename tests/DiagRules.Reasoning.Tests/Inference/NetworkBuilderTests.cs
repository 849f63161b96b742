using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

public class NetworkBuilderTests
{
    private readonly NetworkBuilder _builder = new();

    [Fact]
    public void PriorThatDoesNotAddUp_IsRefusedWithItsSum()
        => Refusal(() => _builder.AddRoot("wear", [0.5, 0.25])).ShouldStartWith("The prior of 'wear' adds up to 0.75; expected 1.");

    [Fact]
    public void NegativeProbability_IsRefused()
        => Refusal(() => _builder.AddRoot("wear", [1.25, -0.25])).ShouldStartWith("The prior of 'wear' holds 1.25; expected probabilities between 0 and 1.");

    [Fact]
    public void NaN_IsRefused()
        => Refusal(() => _builder.AddRoot("wear", [double.NaN, 1])).ShouldStartWith("The prior of 'wear' holds NaN; expected probabilities between 0 and 1.");

    [Fact]
    public void OneGrade_IsRefused()
        => Refusal(() => _builder.AddRoot("wear", [1])).ShouldStartWith("'wear' has 1 grades; expected 2 to 64.");

    [Fact]
    public void ParentThatIsNotThereYet_IsRefused()
        => Refusal(() => _builder.AddGraded("lamp", 2, [1, 0], Contribution.OfLaterGrades(0, [0.5])))
            .ShouldStartWith("'lamp' names the parent 0, and 0 nodes are there yet; add parents before children.");

    [Fact]
    public void ParentNamedTwice_IsRefused()
    {
        var fuse = _builder.AddCause("fuse", 0.1);

        Refusal(() => _builder.AddTable("lamp", 2, [fuse, fuse], [1, 0, 1, 0, 1, 0, 1, 0]))
            .ShouldStartWith("'lamp' names the parent 'fuse' twice; expected each parent once.");
    }

    [Fact]
    public void ContributionOfAFirstGrade_IsRefused()
    {
        var fuse = _builder.AddCause("fuse", 0.1);

        Refusal(() => _builder.AddGraded("lamp", 2, [1, 0], Contribution.Of(fuse, [0.9, 0.1], [0.5, 0.5])))
            .ShouldStartWith("The first grade of 'fuse' contributes something to 'lamp'; expected all of it on the child's first grade.");
    }

    [Fact]
    public void ContributionWithTooFewGradesOfTheParent_IsRefused()
    {
        var wear = _builder.AddRoot("wear", [0.8, 0.1, 0.1]);

        Refusal(() => _builder.AddGraded("lamp", 2, [1, 0], Contribution.OfLaterGrades(wear, [0.5])))
            .ShouldStartWith("The contribution of 'wear' to 'lamp' has 2 distributions; expected 3, one per grade of the parent.");
    }

    [Fact]
    public void TableOfTheWrongSize_IsRefused()
    {
        var fuse = _builder.AddCause("fuse", 0.1);

        Refusal(() => _builder.AddTable("lamp", 2, [fuse], [1, 0]))
            .ShouldStartWith("The table of 'lamp' has 2 numbers; expected 4: 2 combinations of its parents times 2 grades.");
    }

    [Fact]
    public void TableRowThatDoesNotAddUp_IsRefusedWithItsNumber()
    {
        var fuse = _builder.AddCause("fuse", 0.1);

        Refusal(() => _builder.AddTable("lamp", 2, [fuse], [1, 0, 0.5, 0.25])).ShouldStartWith("Row 1 of the table of 'lamp' adds up to 0.75; expected 1.");
    }

    [Fact]
    public void LaterGradesThatAddUpToOneButForRounding_LeaveExactlyNothing()
        => Distribution.WithRest([0.8, 0.15, 0.05])[0].ShouldBe(0);

    [Fact]
    public void LaterGradesOverOne_AreRefused()
        => Refusal(() => Distribution.WithRest([0.75, 0.5])).ShouldStartWith("The later grades add up to 1.25; together they can be 1 at most.");

    [Fact]
    public void OrderOfContributions_DoesNotMatter()
    {
        var fuse = _builder.AddCause("fuse", 0.1);
        var relay = _builder.AddCause("relay", 0.2);
        var one = Contribution.OfLaterGrades(fuse, [0.5, 0.25]);
        var two = Contribution.OfLaterGrades(relay, [0.125, 0.75]);
        int[] lamps = [_builder.AddGraded("lamp", 3, [0.9, 0.1, 0], one, two), _builder.AddGraded("lamp", 3, [0.9, 0.1, 0], two, one)];
        var network = _builder.Build();
        var engine = new InferenceEngine(network);

        var first = engine.Infer(new Evidence(network), lamps[0]).Of(lamps[0]).ToArray();

        engine.Infer(new Evidence(network), lamps[1]).Of(lamps[1]).ToArray().ShouldBe(first);
        network.ParentsOf(lamps[1]).ShouldBe([fuse, relay]);
    }

    private static string Refusal(Action build) => Should.Throw<ArgumentException>(build).Message;
}
