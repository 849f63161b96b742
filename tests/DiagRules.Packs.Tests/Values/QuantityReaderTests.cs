using DiagRules.Model.Quantities;
using DiagRules.Packs.Tests.Conditions;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Tests.Values;

public sealed class QuantityReaderTests
{
    [Theory]
    [InlineData("50 A", 50, "A", 50)]
    [InlineData("-5 degC", -5, "degC", 268.15)]
    [InlineData("30 mL/min", 30, "mL/min", 5e-7)]
    [InlineData("12 N.m", 12, "N.m", 12)]
    [InlineData("5 Mohm", 5, "Mohm", 5e6)]
    [InlineData("5 mohm", 5, "mohm", 0.005)]
    [InlineData("25 %", 25, "%", 0.25)]
    [InlineData("3", 3, "number", 3)]
    public void A_quantity_is_number_one_space_unit(string text, double value, string unit, double si)
    {
        var quantity = Sampled.Sound(text, QuantityReader.Read).ShouldNotBeNull();

        quantity.ShouldBe(new Quantity(value, quantity.Unit));
        quantity.Unit.Symbol.ShouldBe(unit);
        quantity.Si.ShouldBe(si, 1e-12);
    }

    [Theory]
    [InlineData("50 [|a|]", "No unit 'a'. Did you mean 'A'? Small and capital letters matter.")]
    [InlineData("5 [|MOhm|]", "No unit 'MOhm'. Did you mean 'Mohm' or 'mohm'? Small and capital letters matter.")]
    [InlineData("5 [|\u03A9|]", "No unit '\u03A9'. Did you mean 'ohm'? Small and capital letters matter.")]
    [InlineData("5 [|M\u03A9|]", "No unit 'M\u03A9'. Did you mean 'Mohm'? Small and capital letters matter.")]
    [InlineData("5 [|m\u03A9|]", "No unit 'm\u03A9'. Did you mean 'mohm'? Small and capital letters matter.")]
    [InlineData("5 [|Litres|]", "No unit 'Litres'. Did you mean 'L'? Small and capital letters matter.")]
    [InlineData("20 [|\u00B0C|]", "No unit '\u00B0C'. Did you mean 'degC'? Small and capital letters matter.")]
    [InlineData("20 [|Nm|]", "No unit 'Nm'. Did you mean 'N.m'? Small and capital letters matter.")]
    [InlineData("30 [|mL/minute|]", "No unit 'mL/minute'. Did you mean 'mL/min'? Small and capital letters matter.")]
    [InlineData("3 [|furlongs|]", "No unit 'furlongs'; a unit is one of V, A, ohm, bar, mL/min and the like, small and capital letters as they are.")]
    public void An_unknown_unit_comes_with_near_ones(string marked, string message) =>
        Sampled.ShouldFail(marked, QuantityReader.Read, "DR3104", message);

    [Theory]
    [InlineData("[|12,5|] V", "'12,5' is not a number as packs write it: write '12.5'.")]
    [InlineData("[|50A|]", "'50A' is not a number as packs write it: write '50 A', with one space before the unit.")]
    [InlineData("[|50  A|]", "'50  A' is not a quantity as packs write it: write '50 A', with one space before the unit.")]
    [InlineData("[|1 200|] V", "'1 200' is not a number as packs write it: write '1200'.")]
    [InlineData("[|A|]", "'A' is not a number: write digits with a decimal point, such as '12.5'.")]
    public void A_number_that_is_not_readable_comes_with_the_right_spelling(string marked, string message) =>
        Sampled.ShouldFail(marked, QuantityReader.Read, "DR3101", message);

    [Theory]
    [InlineData("V", "[|5|]", "DR3103", "'5' has no unit; a voltage (V) is expected, such as '5 V'.")]
    [InlineData("V", "[|5 A|]", "DR3102", "'5 A' is a current (A), and a voltage (V) is expected, such as '5 V'.")]
    [InlineData("number", "[|5 A|]", "DR3102", "'5 A' is a current (A), and a number is expected, such as '5'.")]
    [InlineData("degC", "[|5 K|]", "DR3105", "'5 K' is a temperature difference (K), and a temperature (degC) is expected here.")]
    [InlineData("K", "[|5 degC|]", "DR3105", "'5 degC' is a temperature (degC), and a temperature difference (K) is expected here.")]
    public void A_key_wants_a_dimension(string unit, string marked, string code, string message) =>
        Sampled.ShouldFail(marked, Reader(unit), code, message);

    [Theory]
    [InlineData("V", "200 mV", 0.2)]
    [InlineData("bar", "100 psi", 689475.7293168361)]
    [InlineData("%", "0.5", 0.5)]
    public void Any_unit_of_the_dimension_will_do(string unit, string text, double si) =>
        Sampled.Sound(text, Reader(unit)).ShouldNotBeNull().Si.ShouldBe(si, 1e-9 * si);

    [Fact]
    public void A_unit_by_itself_is_looked_up()
    {
        Sampled.Sound("mL/min", QuantityReader.ReadUnit).ShouldNotBeNull().Symbol.ShouldBe("mL/min");
        Sampled.ShouldFail("[|volt|]", QuantityReader.ReadUnit, "DR3104", "No unit 'volt'. Did you mean 'V'? Small and capital letters matter.");
    }

    private static Func<PlacedText, ProblemSink, Quantity?> Reader(string unit) =>
        (text, problems) => QuantityReader.Read(text, TestMachine.UnitOf(unit), problems);
}
