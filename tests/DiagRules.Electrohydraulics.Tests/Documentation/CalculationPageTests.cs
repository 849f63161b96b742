using System.Globalization;
using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;

namespace DiagRules.Electrohydraulics.Tests.Documentation;

/// <summary>Each calculation has a page that says what it says about itself, with an example computed anew and what it was compared with.</summary>
public sealed class CalculationPageTests
{
    private const int MostChecks = 6;

    public static IEnumerable<TheoryDataRow<string>> Names =>
        Calling.Library.Calculations.Select(calculation => new TheoryDataRow<string>(calculation.Description.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void Page_SaysWhatTheCalculationSays(string name) => GeneratedPage.ShouldBe($"docs/calculations/{name}.md", Page(name));

    [Fact]
    public void Folder_HoldsNoPageOfACalculationThatIsGone()
    {
        var pages = GeneratedPage.PagesIn("docs/calculations").Except(["README", "units"]);

        pages.ShouldBe(Calling.Library.Calculations.Select(calculation => calculation.Description.Name), ignoreOrder: true);
    }

    private static string Page(string name)
    {
        var description = Calling.Find(name).Description;
        string[] lines =
        [
            $"# `{name}`",
            "",
            $"{description.Title} {(description.Result == Unit.Number ? "A bare number" : $"In {description.Result}")}.",
            "",
            $"- **Formula**: `{description.Formula}`",
            $"- **Range**: {Sentence(description.ValidRange)}",
            $"- **Source**: {Sentence(description.Source)}",
            "",
            "| Parameter | Unit | If left out | What it is |",
            "| --- | --- | --- | --- |",
            .. description.Parameters.Select(parameter => $"| `{parameter.Name}` | {parameter.Unit} | {Default(parameter)} | {parameter.Meaning} |"),
            "",
            .. ExampleLines(Example.All[name]),
            "",
            .. CheckLines(description),
            "",
            "All calculations, and what their numbers are not: [calculations](README.md). Which units may be written: [units](units.md).",
        ];
        return string.Concat(lines.Select(line => line + "\n"));
    }

    private static string Default(CalculationParameter parameter) =>
        parameter.Default is { } si ? Text(Quantity.FromSi(si, parameter.Unit)) : "must be given";

    private static IEnumerable<string> ExampleLines(Example example) =>
        ["## Example", "```", $"$ diagrules {example.Command}", $"{example.Name} = {example.Result()}", "```", $"In a pack: `{example.Call}`."];

    private static IEnumerable<string> CheckLines(CalculationDescription description)
    {
        var checks = CheckValues.All.Values
            .SelectMany(entry => entry.Checks.Where(check => check.Call == description.Name).Select(check => Row(entry, check)))
            .ToList();
        return checks.Count == 0
            ? ["## Compared with", "No published value was at hand. The tests work it out by hand."]
            :
            [
                "## Compared with",
                "| Given | Published | Computed | How well the value is known | Source |",
                "| --- | --- | --- | --- | --- |",
                .. checks.Take(MostChecks),
                .. checks.Count > MostChecks ? (string[])["", $"And {checks.Count - MostChecks} more in the tests."] : [],
            ];
    }

    private static string Row(CheckValues.Entry entry, CheckValues.Check check)
    {
        var given = check.With.Select(pair => (pair.Key, pair.Value)).ToArray();
        var computed = Quantity.FromSi(Calling.Result(check.Call, given).Value, Calling.Read(check.Gives).Unit).Rounded();
        string[] cells = [string.Join(", ", check.With.Select(pair => $"{pair.Key} {pair.Value}")), check.Gives, Text(computed), Known(entry.Confidence), Source(entry.Source)];
        return $"| {string.Join(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal)))} |";
    }

    private static string Text(Quantity quantity) => quantity.ToString(CultureInfo.InvariantCulture);

    private static string Known(string confidence) => confidence switch
    {
        "confirmed-multi" => "seen in several places",
        "confirmed-single" => "seen in one place",
        "memory-sure" => "from memory, arithmetic checked",
        "practice" => "common practice",
        "arithmetic" => "our own arithmetic",
        _ => throw new InvalidOperationException($"No words for '{confidence}'."),
    };

    /// <summary>Collected sources read <c>short | S12: full | S13: full</c>; the full ones are what a reader can follow.</summary>
    private static string Source(string source)
    {
        var parts = source.Split(" | ");
        return parts.Length == 1 ? source : string.Join("; ", parts[1..].Select(part => part[(part.IndexOf(": ", StringComparison.Ordinal) + 2)..]));
    }

    private static string Sentence(string text) => text.EndsWith('.') ? text : text + ".";
}
