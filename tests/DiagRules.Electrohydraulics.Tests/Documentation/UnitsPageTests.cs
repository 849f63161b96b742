using System.Globalization;
using System.Text;
using DiagRules.Model.Quantities;

namespace DiagRules.Electrohydraulics.Tests.Documentation;

public sealed class UnitsPageTests
{
    [Fact]
    public void Page_ListsEveryUnitByKind()
    {
        var text = new StringBuilder("| Kind | SI unit | Symbols, each with its value in SI |\n| --- | --- | --- |\n");
        var kinds = UnitTable.Symbols.Select(UnitTable.Get).GroupBy(unit => unit.Kind).OrderBy(kind => kind.Key, StringComparer.Ordinal);
        foreach (var kind in kinds)
        {
            var symbols = kind.OrderBy(unit => unit.WidthToSi(1)).Select(Symbol);
            text.Append(CultureInfo.InvariantCulture, $"| {kind.Key} | {kind.First().Dimension.SiSymbol} | {string.Join(", ", symbols)} |\n");
        }

        GeneratedPage.ShouldEndWith("docs/calculations/units.md", text.ToString());
    }

    private static string Symbol(Unit unit) =>
        unit.IsPoint ? $"`{unit}` ({new Quantity(unit.ToSi(0), UnitTable.Get("K"))} at 0, {new Quantity(unit.ToSi(100), UnitTable.Get("K"))} at 100)"
        : unit.Symbol == unit.Dimension.SiSymbol ? $"`{unit}`"
        : $"`{unit}` ({new Quantity(unit.ToSi(1), Unit.Number)})";
}
