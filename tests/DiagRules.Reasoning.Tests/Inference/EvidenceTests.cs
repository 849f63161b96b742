using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

public class EvidenceTests
{
    private readonly int _fuse;
    private readonly int _level;
    private readonly Evidence _evidence;

    public EvidenceTests()
    {
        var builder = new NetworkBuilder();
        _fuse = builder.AddCause("fuse", 0.1);
        _level = builder.AddRoot("level", [0.5, 0.25, 0.25]);
        _evidence = new Evidence(builder.Build());
    }

    [Fact]
    public void NewestObservation_Counts()
    {
        _evidence.Observe(_level, 2);
        _evidence.Observe(_level, [1, 0, 0]);

        new InferenceEngine(_evidence.Network).Infer(_evidence, _level).Of(_level).ToArray().ShouldBe([1, 0, 0]);
    }

    [Fact]
    public void Withdraw_TakesAnObservationBack()
    {
        _evidence.Observe(_fuse, 1);
        _evidence.Observe(_level, 2);
        _evidence.Withdraw(_fuse);

        _evidence.Observed.ShouldBe([_level]);
        _evidence.Clear();
        _evidence.IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void GradeThatIsNotThere_IsRefused()
        => Should.Throw<ArgumentOutOfRangeException>(() => _evidence.Observe(_level, 3)).Message.ShouldStartWith("'level' has grades 0 to 2.");

    [Fact]
    public void NodeThatIsNotThere_IsRefused()
        => Should.Throw<ArgumentOutOfRangeException>(() => _evidence.Observe(7, 0)).Message.ShouldStartWith("The network has nodes 0 to 1.");

    [Fact]
    public void LikelihoodsThatAreAllZero_AreRefused()
        => Should.Throw<ArgumentException>(() => _evidence.Observe(_level, [0, 0, 0]))
            .Message.ShouldStartWith("All likelihoods of 'level' are 0; expected one that is not, since something was seen.");

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void LikelihoodOutOfRange_IsRefused(double likelihood)
        => Should.Throw<ArgumentException>(() => _evidence.Observe(_level, [1, likelihood, 0]))
            .Message.ShouldContain("for 'level'; expected a finite number of 0 or more.");

    [Fact]
    public void TooFewLikelihoods_AreRefused()
        => Should.Throw<ArgumentException>(() => _evidence.Observe(_level, [1, 0]))
            .Message.ShouldStartWith("Found 2 likelihoods for 'level'; expected 3, one per grade.");
}
