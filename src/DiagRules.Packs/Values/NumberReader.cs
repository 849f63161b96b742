using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Reads bare numbers: <c>12</c>, <c>-0.5</c>, <c>1e-3</c>.</summary>
internal static class NumberReader
{
    /// <summary>The number, or <see langword="null"/> after reporting how to write it.</summary>
    public static double? Read(PlacedText text, ProblemSink problems)
    {
        if (SignedNumber.Read(text, problems) is not { } number)
        {
            return null;
        }

        if (number.Length == text.Value.Length)
        {
            return number.Value;
        }

        problems.Add(
            ProblemCatalogue.NumberNotReadable,
            text.At(0, text.Value.Length),
            $"'{Excerpt.Of(text.Value)}' is not a bare number: write '{Excerpt.Of(text.Value[..number.Length])}' without what stands behind it.");
        return null;
    }

    /// <summary>A whole number of at least <paramref name="least"/>, or <see langword="null"/> after reporting.</summary>
    public static int? ReadCount(PlacedText text, ProblemSink problems, int least = 1)
    {
        if (Read(text, problems) is not { } number)
        {
            return null;
        }

        if (number >= least && number <= int.MaxValue && Math.Floor(number) == number)
        {
            return (int)number;
        }

        problems.Add(ProblemCatalogue.NumberNotReadable, text.At(0, text.Value.Length), $"'{Excerpt.Of(text.Value)}' is not a whole number of at least {least}.");
        return null;
    }
}
