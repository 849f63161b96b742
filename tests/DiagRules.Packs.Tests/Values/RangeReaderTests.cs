using DiagRules.Model;
using DiagRules.Packs.Tests.Conditions;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Tests.Values;

public sealed class RangeReaderTests
{
    [Theory]
    [InlineData("V", "0 V .. 32 V", 0, 32)]
    [InlineData("V", "-500 mV .. 32 V", -0.5, 32)]
    [InlineData("number", "0 .. 5", 0, 5)]
    [InlineData("degC", "-40 degC .. 120 degC", 233.15, 393.15)]
    [InlineData("V", "5 V..5 V", 5, 5)]
    public void Both_ends_belong_to_a_range(string unit, string text, double least, double most)
    {
        var range = Sampled.Sound(text, Reader(unit)).ShouldNotBeNull();

        range.Least.Si.ShouldBe(least, 1e-9);
        range.Most.Si.ShouldBe(most, 1e-9);
        range.Contains(range.Least.Si).ShouldBeTrue();
        range.Contains(range.Most.Si).ShouldBeTrue();
    }

    [Theory]
    [InlineData("[|32 V .. 0 V|]", "DR3106", "The range '32 V .. 0 V' begins with 32 V and ends with 0 V, which is less; write '0 V .. 32 V'.")]
    [InlineData("[|0 V to 32 V|]", "DR3101", "'0 V to 32 V' is not a range: write the least and the greatest value with two points between them, such as '0 V .. 32 V'.")]
    [InlineData("[|0|] .. 32 V", "DR3103", "'0' has no unit; a voltage (V) is expected, such as '5 V'.")]
    [InlineData("0 V .. [|32 A|]", "DR3102", "'32 A' is a current (A), and a voltage (V) is expected, such as '5 V'.")]
    [InlineData("0 V .. [|3,2|] V", "DR3101", "'3,2' is not a number as packs write it: write '3.2'.")]
    [InlineData("0 V ..[||]", "DR3101", "'' is not a number: write digits with a decimal point, such as '12.5'.")]
    public void What_is_wrong_is_shown_at_its_end(string marked, string code, string message) => Sampled.ShouldFail(marked, Reader("V"), code, message);

    private static Func<PlacedText, ProblemSink, QuantityRange?> Reader(string unit) =>
        (text, problems) => RangeReader.Read(text, TestMachine.UnitOf(unit), problems);
}
