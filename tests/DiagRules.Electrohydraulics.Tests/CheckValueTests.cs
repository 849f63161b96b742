namespace DiagRules.Electrohydraulics.Tests;

/// <summary>Every usable published value; sources and confidences stand beside the values in Data/check-values.json.</summary>
public sealed class CheckValueTests(ITestOutputHelper output)
{
    public static IEnumerable<TheoryDataRow<string>> Ids => CheckValues.All.Keys.Select(id => new TheoryDataRow<string>(id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Calculation_PublishedValue_Agrees(string id)
    {
        var entry = CheckValues.All[id];
        entry.Source.ShouldNotBeNullOrWhiteSpace();
        foreach (var check in entry.Checks)
        {
            var result = Calling.Result(check.Call, [.. check.With.Select(pair => (pair.Key, pair.Value))]);

            result.Reason.ShouldBeNull($"{id}: {check.Call}");
            var expected = Calling.Read(check.Gives);
            expected.Unit.Dimension.ShouldBe(Calling.Find(check.Call).Description.Result.Dimension, $"{id}: {check.Call}");
            result.Value.ShouldBe(expected.Si, check.Allowed(expected.Si), $"{id}: {check.Call} of {entry.What} ({entry.Confidence}; {entry.Source})");
        }
    }

    [Fact]
    public void Collection_EveryUsableEntry_IsCheckedOrSetApartWithAReason()
    {
        var lines = File.ReadAllLines(CheckValues.PathTo("collection.txt"))
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split(' ', 3, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            .ToList();
        foreach (var group in lines.GroupBy(line => line[1]))
        {
            output.WriteLine($"{group.Key}: {group.Count()}");
        }

        lines.Select(line => line[0]).ShouldBeUnique();
        lines.Where(line => line[1] is not ("used" or "apart" or "unsure" or "withheld")).ShouldBeEmpty();
        lines.Where(line => line[1] == "apart" && line.Length < 3).Select(line => line[0]).ShouldBeEmpty("set apart without a reason");
        lines.Where(line => line[1] == "used").Select(line => line[0]).ShouldBe(CheckValues.All.Keys, ignoreOrder: true);
        CheckValues.All.Values.Where(entry => entry.Checks.Length == 0 || entry.Confidence == "memory-unsure").ShouldBeEmpty();
    }

    [Fact]
    public void Library_EveryCalculation_IsCheckedAgainstSomethingPublished()
    {
        // Those without an entry are one line of arithmetic on calculations that have one; FormulaTests works them out by hand.
        string[] byHand = ["amperes-limit", "ohms-limit", "ohms-uncertainty", "cylinder-force-in", "cylinder-time", "cylinder-time-in", "flow-lost", "fluid-level", "cable-drop"];

        var uncovered = Calling.Library.Calculations.Select(calculation => calculation.Description.Name)
            .Except(CheckValues.All.Values.SelectMany(entry => entry.Checks).Select(check => check.Call));

        uncovered.ShouldBe(byHand, ignoreOrder: true);
    }
}
