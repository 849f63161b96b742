using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;
using DiagRules.Model.Tests.Conditions;

namespace DiagRules.Model.Tests.Calculations;

public sealed class ContainmentTests
{
    [Theory]
    [InlineData(double.NaN, "what it gave is not a number")]
    [InlineData(double.PositiveInfinity, "it gave infinity")]
    [InlineData(double.NegativeInfinity, "it gave minus infinity")]
    public void Result_NotFinite_IsAFailure(double value, string reason) =>
        new Returns(() => value).ComputeContained([]).ShouldBe(CalculationResult.Failed(reason));

    [Fact]
    public void Result_NumberOrReason_IsHandedOn()
    {
        new Returns(() => 3.5).ComputeContained([]).ShouldBe(CalculationResult.Of(3.5));
        new Returns(() => CalculationResult.Because("it is cold")).ComputeContained([]).ShouldBe(CalculationResult.Because("it is cold"));
    }

    [Fact]
    public void Exception_IsAFailureWithItsKindAndFirstLine()
    {
        Reason(new InvalidOperationException("First.\nSecond.")).ShouldBe("it threw InvalidOperationException: First.");
        Reason(new InvalidOperationException("")).ShouldBe("it threw InvalidOperationException");
        Reason(new InvalidOperationException(new string('x', 300))).ShouldBe($"it threw InvalidOperationException: {new string('x', 200)}...");
        Reason(new Spiteful()).ShouldBe("it threw Spiteful");
    }

    [Fact]
    public void Call_AllArgumentsKnownAndNoResult_SaysWhatItWasGiven()
    {
        var call = Terms.Call(_ => double.NaN, Terms.Of(0), Terms.Number(2));

        var failure = call.FailureWith(new Facts { Values = { [0] = 1.23456 } }).ShouldNotBeNull();

        failure.Given.ShouldBe("x0 1.235, x1 2");
        failure.Result.IsFailure.ShouldBeTrue();
    }

    [Fact]
    public void Call_WithAResultOrWithoutAnArgument_HasNotFailed()
    {
        Terms.Call(x => x[0], Terms.Of(0)).FailureWith(new Facts { Values = { [0] = 1 } }).ShouldBeNull();
        Terms.Call(_ => double.NaN, Terms.Of(0)).FailureWith(Facts.None).ShouldBeNull();
    }

    private static string? Reason(Exception exception)
    {
        var result = new Returns(() => throw exception).ComputeContained([]);
        result.IsFailure.ShouldBeTrue();
        return result.Reason;
    }

    private sealed class Spiteful : Exception
    {
        public override string Message => throw new InvalidOperationException();
    }

    private sealed class Returns(Func<CalculationResult> function) : ICalculation
    {
        public CalculationDescription Description { get; } = new("returns", "", [], Unit.Number, "", "", "");

        public CalculationResult Compute(ReadOnlySpan<double> arguments) => function();
    }
}
