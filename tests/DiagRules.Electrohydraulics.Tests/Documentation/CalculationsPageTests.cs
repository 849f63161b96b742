using System.Globalization;
using System.Text;
using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;

namespace DiagRules.Electrohydraulics.Tests.Documentation;

public sealed class CalculationsPageTests
{
    [Fact]
    public void Page_ListsEveryCalculationAsItDescribesItself()
    {
        var text = new StringBuilder("| Calculation | Takes | Formula | Source | Range |\n| --- | --- | --- | --- | --- |\n");
        foreach (var calculation in Calling.Library.Calculations)
        {
            text.Append(Row(calculation.Description));
        }

        GeneratedPage.ShouldEndWith("docs/calculations/README.md", text.ToString());
    }

    private static string Row(CalculationDescription description)
    {
        var takes = string.Join("<br>", description.Parameters.Select(Takes));
        string[] cells =
        [
            $"[`{description.Name}`]({description.Name}.md)<br>{description.Title} {(description.Result == Unit.Number ? "A bare number" : $"In {description.Result}")}.",
            takes, $"`{description.Formula}`", description.Source, description.ValidRange,
        ];
        return $"| {string.Join(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal)))} |\n";
    }

    private static string Takes(CalculationParameter parameter)
    {
        var ifLeftOut = parameter.Default is { } value
            ? string.Create(CultureInfo.InvariantCulture, $"; {Quantity.FromSi(value, parameter.Unit)} if left out")
            : "";
        return $"`{parameter.Name}` ({parameter.Unit}{ifLeftOut}): {parameter.Meaning}";
    }
}
