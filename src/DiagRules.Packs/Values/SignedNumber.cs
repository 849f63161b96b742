using System.Text.RegularExpressions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>A number with its sign at the beginning of a value.</summary>
/// <param name="Length">How many characters it takes.</param>
/// <param name="Value">The number.</param>
internal readonly partial record struct SignedNumber(int Length, double Value)
{
    /// <summary>The number that a value begins with, or <see langword="null"/> after reporting how to write it.</summary>
    public static SignedNumber? Read(PlacedText text, ProblemSink problems)
    {
        var value = text.Value;
        var signLength = value.StartsWith('-') ? 1 : 0;
        var rest = value.AsSpan(signLength);
        if (!NumberScanner.Begins(rest))
        {
            Report(text, value.Length, NoNumber(value), problems);
            return null;
        }

        var number = NumberScanner.Scan(rest, sign: value[..signLength]);
        var length = signLength + number.Length;
        if (number.Fault is not null)
        {
            Report(text, length, number.Fault, problems);
            return null;
        }

        if (GroupedBySpaces().Match(value) is { Success: true } grouped)
        {
            Report(text, grouped.Length, $"'{grouped.Value}' is not a number as packs write it: write '{grouped.Value.Replace(" ", "", StringComparison.Ordinal)}'.", problems);
            return null;
        }

        return new(length, signLength == 0 ? number.Value : -number.Value);
    }

    private static string NoNumber(string value)
    {
        value = Excerpt.Of(value);
        if (value.Length > 1 && value[0] is '+' or '\u2212' or '\u2013')
        {
            var spelling = (value[0] == '+' ? "" : "-") + value[1..].TrimStart();
            return $"'{value}' is not a number as packs write it: write '{spelling}'.";
        }

        return $"'{value}' is not a number: write digits with a decimal point, such as '12.5'.";
    }

    private static void Report(PlacedText text, int length, string message, ProblemSink problems) =>
        problems.Add(ProblemCatalogue.NumberNotReadable, text.At(0, length), message);

    [GeneratedRegex(@"^-?[1-9]\d{0,2}([ \u00A0\u202F]\d{3})+(?=$|[ .])(\.\d+)?")]
    private static partial Regex GroupedBySpaces();
}
