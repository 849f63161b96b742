using DiagRules.Cli.Asking;
using DiagRules.Model;
using DiagRules.Model.Quantities;

namespace DiagRules.Cli.Tests.Asking;

public sealed class ReadingFormTests
{
    [Theory]
    [InlineData("12.4", "12.4 V", "Taken as 12.4 V.")]
    [InlineData("-0.2", "-0.2 V", "Taken as -0.2 V.")]
    [InlineData("12.4 V", "12.4 V", null)]
    [InlineData("12400mV", "12400 mV", null)]
    [InlineData("OL", "over-range", "Taken as over range: the meter shows no path.")]
    [InlineData("12,4", "12,4", null)]
    [InlineData("lots", "lots", null)]
    public void TypedText_IsTakenAsAValueWithItsUnit(string typed, string value, string? remark) =>
        new ReadingForm(Reading("V")).Read(typed).ShouldBe(new TypedAnswer(value, remark));

    [Fact]
    public void ACount_HasNoUnit() =>
        new ReadingForm(Reading("number")).Read("3").ShouldBe(new TypedAnswer("3"));

    private static Reading Reading(string unit) => new()
    {
        Id = "value",
        Index = 0,
        Title = "Value",
        Unit = UnitTable.TryGet(unit, out var found) ? found : throw new ArgumentException(unit),
    };
}
