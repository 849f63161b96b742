using System.Text.Json;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>Reads the files under Data; Data/README.md names the origin of each.</summary>
internal static class ReferenceData
{
    public static string PathOf(string name) => Path.Combine(AppContext.BaseDirectory, "Data", name);

    public static JsonElement Json(string name) => JsonDocument.Parse(File.ReadAllText(PathOf(name))).RootElement;

    public static JsonElement Item(JsonElement list, string id) => list.EnumerateArray().Single(item => item.GetProperty("id").GetString() == id);

    public static double[] Doubles(JsonElement array) => [.. array.EnumerateArray().Select(number => number.GetDouble())];

    public static string[] Strings(JsonElement array) => [.. array.EnumerateArray().Select(text => text.GetString()!)];
}
