using System.Globalization;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Reads ISO 8601 dates and times; they stay as they are written.</summary>
internal static class DateReader
{
    private static readonly string[] Dates = ["yyyy-MM-dd"];

    private static readonly string[] Moments =
    [
        "yyyy-MM-dd", "yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss", "yyyy-MM-ddTHH:mmZ", "yyyy-MM-ddTHH:mm:ssZ",
        "yyyy-MM-ddTHH:mmzzz", "yyyy-MM-ddTHH:mm:sszzz", "HH:mm", "HH:mm:ss",
    ];

    /// <summary>A day, or <see langword="null"/> after reporting.</summary>
    public static string? ReadDate(PlacedText text, string key, ProblemSink problems) =>
        Read(text, Dates,
            $"'{key}' is '{Excerpt.Of(text.Value)}'; " +
            "it takes a day that the calendar has, year first (ISO 8601), such as '2026-03-02'.",
            problems);

    /// <summary>A day, a time, or both, or <see langword="null"/> after reporting.</summary>
    public static string? ReadMoment(PlacedText text, string key, ProblemSink problems) =>
        Read(text, Moments, $"'{key}' is '{Excerpt.Of(text.Value)}'; it takes a day or time (ISO 8601), such as '2026-03-02' or '2026-03-02T14:30'.", problems);

    private static string? Read(PlacedText text, string[] forms, string message, ProblemSink problems)
    {
        if (DateTime.TryParseExact(text.Value, forms, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out _))
        {
            return text.Value;
        }

        problems.Add(ProblemCatalogue.WrongKindOfValue, text.At(0, text.Value.Length), message);
        return null;
    }
}
