using DiagRules.Model.Cases;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Reads how far somebody is believed: 0..1, or <c>doubtful</c>.</summary>
internal static class TrustReader
{
    /// <summary>Word for an observer who is not sure.</summary>
    public const string Doubtful = "doubtful";

    /// <summary>The trust, or <see langword="null"/> after reporting.</summary>
    public static double? Read(PlacedText text, ProblemSink problems)
    {
        if (text.Value == Doubtful)
        {
            return Observation.Doubtful;
        }

        if (text.Value.Length > 0 && (char.IsAsciiDigit(text.Value[0]) || text.Value[0] is '.' or '-') && !text.Value.EndsWith('%'))
        {
            var number = NumberReader.Read(text, problems);
            if (number is null or (>= 0 and <= 1))
            {
                return number;
            }
        }

        problems.Add(
            ProblemCatalogue.NotAProbability,
            text.At(0, text.Value.Length),
            $"Trust is '{Excerpt.Of(text.Value)}'; " +
            $"it takes a number from 0 (not believed at all) to 1 (certain), or '{Doubtful}' ({Observation.Doubtful.ToString(System.Globalization.CultureInfo.InvariantCulture)}).");
        return null;
    }
}
