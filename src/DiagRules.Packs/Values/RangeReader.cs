using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Reads ranges: <c>0 V .. 32 V</c>, ends included.</summary>
internal static class RangeReader
{
    private const string Between = "..";

    /// <summary>The range, or <see langword="null"/> after reporting.</summary>
    public static QuantityRange? Read(PlacedText text, Unit expected, ProblemSink problems)
    {
        var at = text.Value.IndexOf(Between, StringComparison.Ordinal);
        if (at < 0)
        {
            problems.Add(
                ProblemCatalogue.NumberNotReadable,
                text.At(0, text.Value.Length),
                $"'{Excerpt.Of(text.Value)}' is not a range: write the least and the greatest value with two points between them, such as '{Example(expected)}'.");
            return null;
        }

        var least = QuantityReader.Read(Part(text, 0, at), expected, problems);
        var most = QuantityReader.Read(Part(text, at + Between.Length, text.Value.Length), expected, problems);
        if (least is null || most is null)
        {
            return null;
        }

        if (least.Value.Si <= most.Value.Si)
        {
            return new QuantityRange(least.Value, most.Value);
        }

        problems.Add(
            ProblemCatalogue.OutOfOrder,
            text.At(0, text.Value.Length),
            $"The range '{Excerpt.Of(text.Value)}' begins with {least} and ends with {most}, which is less; write '{most} .. {least}'.");
        return null;
    }

    private static PlacedText Part(PlacedText text, int start, int end)
    {
        while (start < end && text.Value[start] == ' ')
        {
            start++;
        }

        while (end > start && text.Value[end - 1] == ' ')
        {
            end--;
        }

        return text.Slice(start, end - start);
    }

    private static string Example(Unit unit)
    {
        var type = Model.Conditions.TermType.Of(unit);
        return $"{Measure.Example(type, "0")} .. {Measure.Example(type, "32")}";
    }
}
