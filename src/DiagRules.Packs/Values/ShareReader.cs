using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Reads shares: plain numbers of 0 or more.</summary>
internal static class ShareReader
{
    /// <summary>The share, or <see langword="null"/> after reporting.</summary>
    /// <param name="text">The text.</param>
    /// <param name="subject">Whose share it is, an id.</param>
    /// <param name="problems">Where problems go.</param>
    public static double? Read(PlacedText text, string subject, ProblemSink problems)
    {
        var unsigned = text.Value.AsSpan(text.Value.StartsWith('-') ? 1 : 0);
        if (NumberScanner.Begins(unsigned) && NumberScanner.Scan(unsigned) is var number && number.Length == unsigned.Length)
        {
            if (number.Fault is not null && !unsigned.Contains('%'))
            {
                NumberReader.Read(text, problems);
                return null;
            }

            if (number.Fault is null && unsigned.Length == text.Value.Length)
            {
                return number.Value;
            }
        }

        problems.Add(
            ProblemCatalogue.BadShare,
            text.At(0, text.Value.Length),
            $"The share of '{subject}' is '{Excerpt.Of(text.Value)}'; " +
            "it must be a plain number of 0 or more, such as '9': how often it is behind a complaint compared with the others.");
        return null;
    }
}
