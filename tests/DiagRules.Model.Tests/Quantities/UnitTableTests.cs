using CsCheck;
using DiagRules.Model.Quantities;

namespace DiagRules.Model.Tests.Quantities;

public sealed class UnitTableTests
{
    private static readonly Gen<Unit> AnyUnit = Gen.OneOf([.. UnitTable.Symbols.Select(UnitTable.Get)]);

    private static readonly Gen<Unit> AnyScale = Gen.OneOf([.. UnitTable.Symbols.Select(UnitTable.Get).Where(unit => !unit.IsPoint)]);

    private static readonly Gen<double> AnyValue = Gen.Select(Gen.Double[-1, 1], Gen.Int[-9, 9], (mantissa, exponent) => mantissa * Math.Pow(10, exponent));

    /// <summary>
    /// Factors that are not short decimals, as NIST Special Publication 811 (2008), appendix B.8 and B.9, prints them (from
    /// memory, each recomputed from the exact definitions of the inch, the pound and standard gravity).
    /// </summary>
    [Theory]
    [InlineData("psi", 6.894757e3)]
    [InlineData("inHg", 3.386389e3)]
    [InlineData("lbf", 4.448222)]
    [InlineData("kgf", 9.80665)]
    [InlineData("lbf.ft", 1.355818)]
    [InlineData("lbf.in", 1.129848e-1)]
    [InlineData("kgf.m", 9.80665)]
    [InlineData("kgf/cm2", 9.80665e4)]
    [InlineData("hp", 7.456999e2)]
    [InlineData("PS", 7.354988e2)]
    [InlineData("lb", 4.535924e-1)]
    [InlineData("oz", 2.834952e-2)]
    [InlineData("ft", 3.048e-1)]
    [InlineData("in2", 6.4516e-4)]
    [InlineData("in3", 1.638706e-5)]
    [InlineData("gal", 3.785412e-3)]
    [InlineData("qt", 9.463529e-4)]
    [InlineData("gal/min", 6.309020e-5)]
    [InlineData("deg", 1.745329e-2)]
    [InlineData("rpm", 1.047198e-1)]
    [InlineData("km/h", 2.777778e-1)]
    public void ToSi_InexactFactor_AsNistPrintsIt(string symbol, double printed) =>
        UnitTable.Get(symbol).ToSi(1).ShouldBe(printed, 0.6e-6 * printed);

    [Theory]
    [InlineData(24_200, "mV", 24.2, "V")]
    [InlineData(0.7, "L", 0.7e-3, "m3")]
    [InlineData(30, "mL/min", 0.03, "L/min")]
    [InlineData(1500, "mohm", 1.5, "ohm")]
    [InlineData(4.7, "mm/ms", 4.7, "m/s")]
    [InlineData(12.34, "mL/L", 12340, "ppm")]
    [InlineData(50, "%", 0.5, "number")]
    [InlineData(2.5, "mm2", 2.5e-6, "m2")]
    [InlineData(150, "bar", 15, "MPa")]
    [InlineData(3, "Wh/h", 3, "W")]
    public void ToSi_DecimalMultiple_IsTheSameNumber(double left, string leftUnit, double right, string rightUnit) =>
        UnitTable.Get(leftUnit).ToSi(left).ShouldBe(UnitTable.Get(rightUnit).ToSi(right));

    [Fact]
    public void ToSi_WholeNumbersOfDecimalMultiples_AreTheNearestDouble()
    {
        (string Symbol, decimal Factor)[] multiples = [("mV", 0.001m), ("uA", 0.000001m), ("mm2", 0.000001m), ("cL", 0.00001m), ("%", 0.01m), ("kPa", 1000m), ("Mohm", 1e6m)];

        Gen.Select(Gen.OneOf(multiples), Gen.Int[-1_000_000, 1_000_000]).Sample((multiple, value) =>
            UnitTable.Get(multiple.Symbol).ToSi(value) == (double)(value * multiple.Factor));
    }

    [Fact]
    public void FromSi_UndoesToSi() =>
        Gen.Select(AnyUnit, AnyValue).Sample((unit, value) =>
            Math.Abs(unit.FromSi(unit.ToSi(value)) - value) <= 1e-15 * (4 * Math.Abs(value) + (unit.IsPoint ? 1000 : 0)));

    [Fact]
    public void Widths_LeaveTheZeroPointOut() =>
        Gen.Select(AnyUnit, AnyValue, AnyValue).Sample((unit, value, width) =>
        {
            var si = unit.WidthToSi(width);
            var scale = Math.Abs(unit.ToSi(value)) + Math.Abs(si);
            return Math.Abs(unit.ToSi(value + width) - unit.ToSi(value) - si) <= 1e-14 * scale
                && Math.Abs(unit.WidthFromSi(si) - width) <= 1e-15 * 4 * Math.Abs(width);
        });

    [Fact]
    public void Compounds_MultiplyAndDivideDimensionsAndFactors() =>
        Gen.Select(AnyScale, AnyScale).Sample((left, right) =>
        {
            var quotient = UnitTable.Get($"{left}/{right}");
            var ratio = left.ToSi(1) / right.ToSi(1);
            quotient.Dimension.ShouldBe(left.Dimension / right.Dimension);
            quotient.ToSi(1).ShouldBe(ratio, 1e-14 * ratio);

            var both = $"{left}.{right}";
            if (UnitTable.Symbols.Any(symbol => symbol.Length > left.Symbol.Length && both.StartsWith(symbol, StringComparison.Ordinal)))
            {
                return; // N.m and its like are units of their own
            }

            var product = UnitTable.Get(both);
            product.Dimension.ShouldBe(left.Dimension * right.Dimension);
            product.ToSi(1).ShouldBe(left.ToSi(1) * right.ToSi(1), 1e-14 * product.ToSi(1));
        });

    [Theory]
    [InlineData("V/A", "ohm")]
    [InlineData("V.A", "W")]
    [InlineData("A.h", "Ah")]
    [InlineData("kW.h", "kWh")]
    [InlineData("N/m2", "Pa")]
    [InlineData("bar.L/min", "W")]
    [InlineData("N.m.rad/s", "W")]
    [InlineData("N.m/A", "V.s/rad")]
    [InlineData("cm3/rev", "L/rad")]
    [InlineData("m/s/s", "m/s2")]
    [InlineData("C/s", "A")]
    [InlineData("J/s", "W")]
    [InlineData("1/s", null)]
    [InlineData("number/s", "Hz")]
    public void Dimensions_Close(string left, string? right)
    {
        if (right is null)
        {
            UnitTable.TryGet(left, out _).ShouldBeFalse();
            return;
        }

        UnitTable.Get(left).Dimension.ShouldBe(UnitTable.Get(right).Dimension);
    }

    [Theory]
    [InlineData("N.m", "J")]
    [InlineData("rpm", "Hz")]
    [InlineData("N.m", "kN")]
    [InlineData("mPa.s", "mm2/s")]
    public void Dimensions_ThatPeopleMixUp_Differ(string left, string right) =>
        UnitTable.Get(left).Dimension.ShouldNotBe(UnitTable.Get(right).Dimension);

    [Theory]
    [InlineData("mohm", 1e-3)]
    [InlineData("Mohm", 1e6)]
    [InlineData("mW", 1e-3)]
    [InlineData("MW", 1e6)]
    [InlineData("mPa", 1e-3)]
    [InlineData("MPa", 1e6)]
    public void Symbols_CaseCounts(string symbol, double factor) => UnitTable.Get(symbol).ToSi(1).ShouldBe(factor);

    [Fact]
    public void Units_OfOneSymbol_AreEqual()
    {
        UnitTable.Get("mL/min").ShouldBe(UnitTable.Get("mL/min"));
        UnitTable.Get("mL/min").GetHashCode().ShouldBe(UnitTable.Get("mL/min").GetHashCode());
        UnitTable.Get("mL").ShouldNotBe(UnitTable.Get("cm3"));
        UnitTable.Get("V").Equals(null).ShouldBeFalse();
    }

    [Fact]
    public void Temperatures_PointsAreNoDifferences()
    {
        UnitTable.Get("degC").IsPoint.ShouldBeTrue();
        UnitTable.Get("K").IsPoint.ShouldBeFalse();
        UnitTable.Get("degC").ToSi(25).ShouldBe(298.15);
        UnitTable.Get("degF").ToSi(212).ShouldBe(373.15, 1e-12);
        UnitTable.Get("degC").WidthToSi(0.5).ShouldBe(0.5);
    }

    [Theory]
    [InlineData("")]
    [InlineData("v")]
    [InlineData("V ")]
    [InlineData(".V")]
    [InlineData("V/")]
    [InlineData("V//A")]
    [InlineData("V./A")]
    [InlineData("W/m.K")]
    [InlineData("degC/min")]
    [InlineData("W.degC")]
    [InlineData("Ω")]
    [InlineData("V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V.V")]
    public void TryGet_NotASymbol_IsFalse(string symbol)
    {
        UnitTable.TryGet(symbol, out var unit).ShouldBeFalse();
        unit.ShouldBeNull();
    }

    [Fact]
    public void TryGet_AnyText_NeverThrows() =>
        Gen.String[Gen.Char["Vmohkg/.% Ω2"], 0, 70].Sample(text =>
        {
            UnitTable.NearestSymbols(text).Where(symbol => !UnitTable.TryGet(symbol, out _)).ShouldBeEmpty();
            return UnitTable.TryGet(text, out var unit) == unit is not null;
        });

    [Fact]
    public void Get_UnknownSymbol_SaysWhatMayBeMeant() =>
        Should.Throw<ArgumentException>(() => UnitTable.Get("mOhm")).Message
            .ShouldBe("No unit 'mOhm'. Did you mean 'mohm' or 'Mohm'? (Parameter 'symbol')");

    [Fact]
    public void Get_NothingNear_SaysSo() =>
        Should.Throw<ArgumentException>(() => UnitTable.Get("furlong")).Message.ShouldBe("No unit 'furlong'. (Parameter 'symbol')");
}
