using DiagRules.Model;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Tests.Conditions;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Tests.Values;

public sealed class AccuracyReaderTests
{
    [Theory]
    [InlineData("V", "0.5 % + 0.02 V", 0.005, 0.02)]
    [InlineData("V", "20 mV + 0.5 %", 0.005, 0.02)]
    [InlineData("V", "0.5 %", 0.005, 0)]
    [InlineData("bar", "4 bar", 0, 4e5)]
    [InlineData("degC", "1 % + 2 K", 0.01, 2)]
    [InlineData("number", "1", 0, 1)]
    [InlineData("%", "2 %", 0.02, 0)]
    [InlineData("V", "0 V", 0, 0)]
    public void A_fraction_of_the_reading_a_fixed_part_or_both(string unit, string text, double relative, double width)
    {
        var accuracy = Sampled.Sound(text, Reader(unit)).ShouldNotBeNull();

        accuracy.Relative.ShouldBe(relative, 1e-15);
        accuracy.Fixed.ShouldBe(width, 1e-9);
    }

    // JCGM 100:2008, 4.3.7 and 5.1.5: a voltmeter good to 14e-6 of the reading plus 2e-6 of its 1 V range shows 0.928 571 V. The
    // half-width is 15 uV and the standard uncertainty 8.7 uV. (Numbers from memory, arithmetic rechecked.)
    [Fact]
    public void Limits_become_a_standard_uncertainty_as_in_the_example_of_the_guide() =>
        Sampled.Sound("0.0014 % + 0.002 mV", Reader("V")).ShouldNotBeNull().StandardUncertainty(0.928571).ShouldBe(8.7e-6, 0.05e-6);

    // Worked examples of meter makers: +/-(0.8 % + 2) at 100.0 V is +/-1.0 V, +/-(1 % + 3) at 120.0 V is +/-1.5 V.
    [Theory]
    [InlineData("0.8 % + 2 digits", 100.0, 1.0)]
    [InlineData("1 % + 3 digits", 120.0, 1.5)]
    public void Percent_and_digits_add_up_as_meter_makers_have_it(string text, double reading, double limit)
    {
        var accuracy = Sampled.Sound(text, Reader("V", TestMachine.Of(0.1, "V"))).ShouldNotBeNull();

        (accuracy.StandardUncertainty(reading) * Math.Sqrt(3)).ShouldBe(limit, 1e-12);
    }

    [Theory]
    [InlineData("0.5 % + 2 digits", 0.005, 0.02)]
    [InlineData("1 digit", 0, 0.01)]
    [InlineData("3 digits + 1 %", 0.01, 0.03)]
    public void Digits_count_in_steps_of_the_resolution(string text, double relative, double width)
    {
        var accuracy = Sampled.Sound(text, Reader("V", TestMachine.Of(10, "mV"))).ShouldNotBeNull();

        accuracy.Relative.ShouldBe(relative, 1e-15);
        accuracy.Fixed.ShouldBe(width, 1e-15);
    }

    [Theory]
    [InlineData("V", "10 mV", 0.01)]
    [InlineData("degC", "0.1 K", 0.1)]
    [InlineData("number", "1", 1)]
    public void A_resolution_is_a_difference(string unit, string text, double width)
    {
        var step = Sampled.Sound(text, (placed, problems) => AccuracyReader.ReadResolution(placed, TestMachine.UnitOf(unit), problems)).ShouldNotBeNull();

        step.Unit.WidthToSi(step.Value).ShouldBe(width, 1e-15);
    }

    [Theory]
    [InlineData("V", "[|0.01 A|]", "DR3102")]
    [InlineData("V", "[|0.01|]", "DR3103")]
    [InlineData("V", "[|-0.01 V|]", "DR3101")]
    [InlineData("degC", "[|0.1 degC|]", "DR3105")]
    [InlineData("K", "[|0.1 degC|]", "DR3105")]
    public void A_resolution_of_another_kind_is_refused(string unit, string marked, string code) =>
        Sampled.CodeOf(marked, (text, problems) => AccuracyReader.ReadResolution(text, TestMachine.UnitOf(unit), problems)).ShouldBe(code);

    [Theory]
    [InlineData("V", "0.5 % + [|2 digits|]", "DR2002", "'2 digits' counts in the last digit of the meter; say what one is worth, such as 'resolution: 0.01 V'.")]
    [InlineData("V", "0.5 % + [|2 A|]", "DR3102", "'2 A' is a current (A), and a voltage (V) is expected, such as '5 V'.")]
    [InlineData("V", "[|0.02|]", "DR3103", "'0.02' has no unit; a voltage (V) is expected, such as '5 V'.")]
    [InlineData("degC", "[|2 degC|]", "DR3105", "'2 degC' is a temperature, and an accuracy is a difference of two; write '2 K'.")]
    [InlineData("V", "[|-0.02 V|]", "DR3101", "'-0.02 V' is below zero; an accuracy holds to both sides, so write '0.02 V'.")]
    [InlineData("V", "0.02 V + [|0.1 V|]", "DR3101", "'0.1 V' is a second part of the same kind; an accuracy is a percentage of the reading, a fixed part, or one of each.")]
    [InlineData("V", "[|1 % + 1 V + 1 V|]", "DR3101", "'1 % + 1 V + 1 V' has more than two parts; an accuracy is a percentage, a fixed part, or both: '0.5 % + 0.02 V'.")]
    [InlineData("V", "[|0,5|] % + 0.02 V", "DR3101", "'0,5' is not a number as packs write it: write '0.5'.")]
    [InlineData("V", "[|5%|]", "DR3101", "'5%' is not a number as packs write it: write '5 %', with one space before the unit.")]
    public void What_is_wrong_is_shown_at_its_part(string unit, string marked, string code, string message) =>
        Sampled.ShouldFail(marked, Reader(unit), code, message);

    private static Func<PlacedText, ProblemSink, Accuracy?> Reader(string unit, Quantity? resolution = null) =>
        (text, problems) => AccuracyReader.Read(text, TestMachine.UnitOf(unit), resolution, problems);
}
