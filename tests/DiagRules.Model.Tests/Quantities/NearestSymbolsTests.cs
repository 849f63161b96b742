using DiagRules.Model.Quantities;

namespace DiagRules.Model.Tests.Quantities;

/// <summary>Spellings technicians write, and the symbol packs want for each.</summary>
public sealed class NearestSymbolsTests
{
    [Theory]
    [InlineData("mOhm", "mohm")]
    [InlineData("MOhm", "Mohm")]
    [InlineData("kΩ", "kohm")]
    [InlineData("µA", "uA")]
    [InlineData("volts", "V")]
    [InlineData("Amp", "A")]
    [InlineData("ma", "mA")]
    [InlineData("AH", "Ah")]
    [InlineData("l", "L")]
    [InlineData("ml", "mL")]
    [InlineData("l/min", "L/min")]
    [InlineData("ml/min", "mL/min")]
    [InlineData("lpm", "L/min")]
    [InlineData("cc", "cm3")]
    [InlineData("cm³", "cm3")]
    [InlineData("mm²", "mm2")]
    [InlineData("mm^2", "mm2")]
    [InlineData("Nm", "N.m")]
    [InlineData("N·m", "N.m")]
    [InlineData("N*m", "N.m")]
    [InlineData("ft.lb", "lbf.ft")]
    [InlineData("Bar", "bar")]
    [InlineData("PSI", "psi")]
    [InlineData("kpa", "kPa")]
    [InlineData("psig", "psi")]
    [InlineData("°C", "degC")]
    [InlineData("Celsius", "degC")]
    [InlineData("degC/min", "K/min")]
    [InlineData("sec", "s")]
    [InlineData("hrs", "h")]
    [InlineData("Kg", "kg")]
    [InlineData("lbs", "lb")]
    [InlineData("RPM", "rpm")]
    [InlineData("1/min", "rpm")]
    [InlineData("m/sec", "m/s")]
    [InlineData("W/m.K", "W/m/K")]
    [InlineData("percent", "%")]
    [InlineData("ohsm", "ohm")]
    [InlineData("volt.s", "V.s")]
    public void First_IsWhatWasMeant(string written, string meant) =>
        UnitTable.NearestSymbols(written)[0].ShouldBe(meant);

    [Fact]
    public void ProductBehindADivisionSign_OffersBothReadings() =>
        UnitTable.NearestSymbols("W/m.K").ShouldBe(["W/m/K", "W.K/m"]);

    [Theory]
    [InlineData("furlong")]
    [InlineData("x")]
    [InlineData("")]
    [InlineData("/")]
    public void NothingNear_IsEmpty(string written) => UnitTable.NearestSymbols(written).ShouldBeEmpty();

    [Fact]
    public void ManyUnknownParts_GuessesStayFew() =>
        UnitTable.NearestSymbols(string.Join('.', Enumerable.Repeat("mm3m", 12)), 1000).Count.ShouldBeInRange(1, 64);

    [Fact]
    public void KnownSymbol_IsNotItsOwnNeighbour() => UnitTable.NearestSymbols("mohm").ShouldNotContain("mohm");

    [Fact]
    public void Count_IsTheMost() => UnitTable.NearestSymbols("mOhm", 1).ShouldBe(["mohm"]);
}
