using System.Text.Json;
using DiagRules.Model.Quantities;

namespace DiagRules.Electrohydraulics.Tests;

/// <summary>The published values in Data/check-values.json.</summary>
internal static class CheckValues
{
    private static readonly JsonSerializerOptions Options = new() { PropertyNameCaseInsensitive = true };

    public static IReadOnlyDictionary<string, Entry> All { get; } = Load();

    private static Dictionary<string, Entry> Load()
    {
        using var file = File.OpenRead(PathTo("check-values.json"));
        return JsonSerializer.Deserialize<Book>(file, Options)!.Entries.ToDictionary(entry => entry.Id);
    }

    public static string PathTo(string name) => Path.Combine(AppContext.BaseDirectory, "Data", name);

    internal sealed record Book(string About, Entry[] Entries);

    internal sealed record Entry(string Id, string Confidence, string What, string Source, string? Note, Check[] Checks);

    /// <param name="Call">Name of the calculation.</param>
    /// <param name="With">Arguments by name, as packs write them.</param>
    /// <param name="Gives">What must come out.</param>
    /// <param name="Within">By how much it may differ: an amount, a percentage of the value, or percentage points (%pt).</param>
    internal sealed record Check(string Call, Dictionary<string, string> With, string Gives, string Within)
    {
        public double Allowed(double expectedSi)
        {
            var allowed = Within.EndsWith(" %pt", StringComparison.Ordinal) ? Calling.Read(Within[..^2]).Si
                : Within.EndsWith(" %", StringComparison.Ordinal) ? Calling.Read(Within).Si * Math.Abs(expectedSi)
                : Calling.Read(Within) is var width ? width.Unit.WidthToSi(width.Value)
                : 0;

            // A difference of exactly the tolerance passes, whatever the last bits say.
            return allowed + (1e-9 * Math.Max(allowed, Math.Abs(expectedSi)));
        }
    }
}
