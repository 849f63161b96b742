using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Reads probabilities: 0..1, a percentage, or a word.</summary>
internal static class ProbabilityReader
{
    /// <summary>The probability, or <see langword="null"/> after reporting.</summary>
    public static double? Read(PlacedText text, ProbabilityWords words, ProblemSink problems)
    {
        if (words.TryGet(text.Value, out var probability))
        {
            return probability;
        }

        if (text.Value.Length == 0 || char.IsLetter(text.Value[0]))
        {
            Report(text, words, problems, Spelling.DidYouMean(text.Value, words.All));
            return null;
        }

        if (QuantityReader.Read(text, problems) is not { } quantity)
        {
            return null;
        }

        if (quantity.Unit.Dimension.IsNone && quantity.Si is >= 0 and <= 1)
        {
            return quantity.Si;
        }

        var percentage = quantity.Unit == Unit.Number && quantity.Value is > 1 and <= 100 ? $" Did you mean '{text.Value} %'?" : "";
        Report(text, words, problems, percentage);
        return null;
    }

    private static void Report(PlacedText text, ProbabilityWords words, ProblemSink problems, string proposal) =>
        problems.Add(
            ProblemCatalogue.NotAProbability,
            text.At(0, text.Value.Length),
            $"'{Excerpt.Of(text.Value)}' is not a probability, which is 0..1, a percentage, or one of {string.Join(", ", words.All)}.{proposal}");
}
