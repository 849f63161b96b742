using System.Globalization;
using System.Text.RegularExpressions;
using DiagRules.Model.Quantities;

namespace DiagRules.Electrohydraulics.Tests.Documentation;

/// <summary>A worked example of one calculation.</summary>
/// <param name="Name">The calculation.</param>
/// <param name="Given">Its arguments, as packs write them.</param>
internal sealed partial record Example(string Name, (string Name, string Value)[] Given)
{
    public static IReadOnlyDictionary<string, Example> All { get; } = File.ReadAllLines(CheckValues.PathTo("examples.txt"))
        .Where(line => line.Length > 0 && line[0] != '#')
        .Select(Parse)
        .ToDictionary(example => example.Name);

    /// <summary>As typed behind the tool's name.</summary>
    public string Command => $"calculate {Name} {string.Join(' ', Given.Select(given => $"{given.Name}=\"{given.Value}\""))}";

    /// <summary>As a pack writes it.</summary>
    public string Call => $"{Name}({string.Join(", ", Given.Select(given => $"{given.Name}: {given.Value}"))})";

    /// <summary>The result in the unit of the description, with the digits the tool shows.</summary>
    public string Result() => new Quantity(Calling.Value(Name, Given), Calling.Find(Name).Description.Result).Rounded().ToString(CultureInfo.InvariantCulture);

    private static Example Parse(string line) => new(
        line[..line.IndexOf(' ', StringComparison.Ordinal)],
        [.. Argument().Matches(line).Select(match => (match.Groups[1].Value, match.Groups[2].Value))]);

    [GeneratedRegex("([a-z0-9-]+)=\"([^\"]+)\"")]
    private static partial Regex Argument();
}
