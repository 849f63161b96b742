using System.Globalization;
using System.Text.RegularExpressions;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>Reads as much of the Interchange Format for Bayesian networks (1998) as the files under Data/networks use.</summary>
internal static partial class BifReader
{
    public static NamedNetwork Read(string path)
    {
        var text = File.ReadAllText(path);
        var states = VariablePattern().Matches(text).ToDictionary(match => match.Groups["name"].Value, match => Words(match.Groups["states"].Value));
        var tables = ProbabilityPattern().Matches(text).Select(match => new Table(match, states)).ToList();
        var network = new NamedNetwork();
        var added = new HashSet<string>();
        while (tables.Count > 0)
        {
            var ready = tables.First(table => added.IsSupersetOf(table.Parents));
            network.AddTable(ready.Name, states[ready.Name], ready.Parents, ready.Rows);
            added.Add(ready.Name);
            tables.Remove(ready);
        }

        return network;
    }

    private static string[] Words(string text) => text.Split([',', ' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries);

    private static double[] Numbers(string text) => [.. Words(text).Select(word => double.Parse(word, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"variable\s+(?<name>\S+)\s*\{\s*type\s+discrete\s*\[\s*\d+\s*\]\s*\{(?<states>[^}]*)\}")]
    private static partial Regex VariablePattern();

    [GeneratedRegex(@"probability\s*\(\s*(?<name>[^\s|)]+)\s*(\|(?<parents>[^)]*))?\)\s*\{(?<body>[^}]*)\}")]
    private static partial Regex ProbabilityPattern();

    [GeneratedRegex(@"\((?<given>[^)]*)\)(?<numbers>[^;]*);")]
    private static partial Regex RowPattern();

    [GeneratedRegex(@"table(?<numbers>[^;]*);")]
    private static partial Regex RootPattern();

    private sealed class Table
    {
        public Table(Match match, Dictionary<string, string[]> states)
        {
            Name = match.Groups["name"].Value;
            Parents = Words(match.Groups["parents"].Value);
            var body = match.Groups["body"].Value;
            if (Parents.Length == 0)
            {
                Rows = [Numbers(RootPattern().Match(body).Groups["numbers"].Value)];
                return;
            }

            Rows = new double[Parents.Aggregate(1, (product, parent) => product * states[parent].Length)][];
            foreach (Match row in RowPattern().Matches(body))
            {
                var given = Words(row.Groups["given"].Value);
                var index = Parents.Zip(given).Aggregate(0, (i, pair) => (i * states[pair.First].Length) + Array.IndexOf(states[pair.First], pair.Second));
                Rows[index] = Numbers(row.Groups["numbers"].Value);
            }
        }

        public string Name { get; }

        public string[] Parents { get; }

        public double[][] Rows { get; }
    }
}
