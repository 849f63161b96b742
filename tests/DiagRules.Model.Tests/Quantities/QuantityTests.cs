using System.Globalization;
using CsCheck;
using DiagRules.Model.Quantities;

namespace DiagRules.Model.Tests.Quantities;

public sealed class QuantityTests
{
    [Theory]
    [InlineData(12.4, "V", "12.4 V")]
    [InlineData(12, "V", "12 V")]
    [InlineData(-0.0, "V", "0 V")]
    [InlineData(-3.5, "degC", "-3.5 degC")]
    [InlineData(0.1 + 0.2, "V", "0.3 V")]
    [InlineData(12.399999999999999, "V", "12.4 V")]
    [InlineData(152.173913043, "A", "152.1739 A")]
    [InlineData(0.00012345678, "A", "0.0001234568 A")]
    [InlineData(0.0000123, "A", "1.23e-5 A")]
    [InlineData(1_700_000.5, "Pa", "1700001 Pa")]
    [InlineData(170_000_000, "Pa", "170000000 Pa")]
    [InlineData(1_700_000_000, "Pa", "1.7e9 Pa")]
    [InlineData(25, "%", "25 %")]
    [InlineData(3, "number", "3")]
    [InlineData(double.PositiveInfinity, "ohm", "over range")]
    [InlineData(double.NegativeInfinity, "V", "under range")]
    [InlineData(double.NaN, "V", "unknown")]
    public void ToString_AsPeopleWriteIt(double value, string unit, string text) =>
        $"{new Quantity(value, UnitTable.Get(unit))}".ShouldBe(text);

    [Theory]
    [InlineData("de-DE", "12,4 V")]
    [InlineData("en-GB", "12.4 V")]
    [InlineData("fr-FR", "12,4 V")]
    public void ToString_DecimalSign_IsTheReaders(string culture, string text) =>
        new Quantity(12.4, UnitTable.Get("V")).ToString(CultureInfo.GetCultureInfo(culture)).ShouldBe(text);

    [Fact]
    public void ToString_Interpolated_UsesTheInvariantPointWhateverTheCulture()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

            $"{new Quantity(12.4, UnitTable.Get("V"))}".ShouldBe("12.4 V");
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void ToString_ReadBack_IsTheSameWithinSevenDigits() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Int[-12, 12]).Sample((mantissa, exponent) =>
        {
            var value = mantissa * Math.Pow(10, exponent);
            var read = double.Parse($"{new Quantity(value, Unit.Number)}", CultureInfo.InvariantCulture);
            return Math.Abs(read - value) <= 5.0001e-7 * Math.Abs(value);
        });

    [Theory]
    [InlineData(152.1739, 4, 152.2)]
    [InlineData(0.0831500001, 3, 0.0832)]
    [InlineData(0.08315, 2, 0.083)]
    [InlineData(9.99, 2, 10)]
    [InlineData(123456.7, 4, 123457)]
    [InlineData(-2.345678, 3, -2.35)]
    [InlineData(0, 4, 0)]
    public void Rounded_KeepsSignificantDigitsAndWholeNumbers(double value, int digits, double rounded) =>
        new Quantity(value, Unit.Number).Rounded(digits).Value.ShouldBe(rounded);

    [Theory]
    [InlineData(0)]
    [InlineData(16)]
    public void Rounded_OutsideOneToFifteen_Throws(int digits) =>
        Should.Throw<ArgumentOutOfRangeException>(() => new Quantity(1, Unit.Number).Rounded(digits));

    [Fact]
    public void Rounded_NotFinite_StaysAsItIs()
    {
        new Quantity(double.PositiveInfinity, Unit.Number).Rounded().Value.ShouldBe(double.PositiveInfinity);
        double.IsNaN(new Quantity(double.NaN, Unit.Number).Rounded().Value).ShouldBeTrue();
    }

    [Fact]
    public void In_TheReadersUnit()
    {
        var pressure = new Quantity(150, UnitTable.Get("bar"));

        $"{pressure.In(UnitTable.Get("psi")).Rounded()}".ShouldBe("2176 psi");
        $"{pressure.In(UnitTable.Get("MPa"))}".ShouldBe("15 MPa");
        $"{new Quantity(68, UnitTable.Get("degF")).In(UnitTable.Get("degC"))}".ShouldBe("20 degC");
    }

    [Theory]
    [InlineData("V", "A", "'12 V' is a voltage and 'A' measures current. (Parameter 'unit')")]
    [InlineData("K", "degC", "'12 K' is a temperature difference and 'degC' measures temperature. (Parameter 'unit')")]
    [InlineData("N.m", "J", "'12 N.m' is a torque and 'J' measures energy. (Parameter 'unit')")]
    public void In_AnotherKind_Throws(string unit, string other, string message) =>
        Should.Throw<ArgumentException>(() => new Quantity(12, UnitTable.Get(unit)).In(UnitTable.Get(other))).Message.ShouldBe(message);

    [Fact]
    public void Equality_IsThatOfWhatWasWritten()
    {
        var volt = new Quantity(1, UnitTable.Get("V"));
        var millivolts = new Quantity(1000, UnitTable.Get("mV"));

        volt.ShouldNotBe(millivolts);
        volt.Si.ShouldBe(millivolts.Si);
        new Quantity(30, UnitTable.Get("mL/min")).ShouldBe(new Quantity(30, UnitTable.Get("mL/min")));
    }
}
