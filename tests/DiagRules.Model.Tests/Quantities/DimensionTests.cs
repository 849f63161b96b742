using CsCheck;
using DiagRules.Model.Quantities;

namespace DiagRules.Model.Tests.Quantities;

public sealed class DimensionTests
{
    private static readonly Gen<Dimension> Any =
        Gen.SByte[-3, 3].Array[6].Select(powers => new Dimension(powers[0], powers[1], powers[2], powers[3], powers[4], powers[5]));

    [Theory]
    [InlineData("V", "voltage")]
    [InlineData("mohm", "resistance")]
    [InlineData("bar", "pressure")]
    [InlineData("L/min", "flow")]
    [InlineData("rpm", "speed of rotation")]
    [InlineData("N.m", "torque")]
    [InlineData("kWh", "energy")]
    [InlineData("degC", "temperature")]
    [InlineData("K", "temperature difference")]
    [InlineData("%", "number")]
    [InlineData("cm3/rev", "volume per turn")]
    [InlineData("mm2/s", "kinematic viscosity")]
    [InlineData("m.A", "quantity in m.A")]
    [InlineData("V.V", "quantity in kg.kg.m.m.m.m/A/A/s/s/s/s/s/s")]
    [InlineData("number/s/s", "quantity in number/s/s")]
    public void Kind_InAWordOrTwo(string symbol, string kind) => UnitTable.Get(symbol).Kind.ShouldBe(kind);

    [Fact]
    public void Kind_OfEverySimpleSymbol_HasAName() =>
        UnitTable.Symbols.Where(symbol => UnitTable.Get(symbol).Kind.StartsWith("quantity in", StringComparison.Ordinal)).ShouldBeEmpty();

    [Fact]
    public void SiSymbol_IsReadAsTheSameDimensionWithFactorOne() =>
        Any.Sample(dimension =>
        {
            var unit = UnitTable.Get(dimension.SiSymbol);
            return unit.Dimension == dimension && unit.ToSi(1) == 1;
        });

    [Fact]
    public void Product_OfTooMany_NeverComesRoundToSomethingPlausible()
    {
        var farad = UnitTable.Get("F").Dimension;

        var product = Enumerable.Repeat(farad, 64).Aggregate(Dimension.None, (left, right) => left * right);

        product.ShouldBe(new Dimension(Length: -128, Mass: -64, Time: 127, Current: 127));
    }

    [Fact]
    public void Product_ThenQuotient_IsWhereItBegan() =>
        Gen.Select(Any, Any).Sample((left, right) => left * right / right == left && left * right == right * left && left / left == Dimension.None);
}
