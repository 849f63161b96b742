using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Reads quantities: number, one space, unit.</summary>
internal static class QuantityReader
{
    /// <summary>A quantity of the dimension of <paramref name="expected"/> in any of its units, or <see langword="null"/> after reporting.</summary>
    public static Quantity? Read(PlacedText text, Unit expected, ProblemSink problems) =>
        Read(text, problems) is { } quantity && ExpectedType.IsMet(text, TermType.Of(quantity.Unit), TermType.Of(expected), problems) ? quantity : null;

    /// <summary>Any quantity, or a bare number in <see cref="Unit.Number"/>; <see langword="null"/> after reporting.</summary>
    public static Quantity? Read(PlacedText text, ProblemSink problems)
    {
        if (SignedNumber.Read(text, problems) is not { } number)
        {
            return null;
        }

        var written = text.Value[number.Length..];
        if (written.Length == 0)
        {
            return new Quantity(number.Value, Unit.Number);
        }

        var symbol = written.Trim();
        if (!UnitScanner.TryGet(symbol, out var unit))
        {
            problems.Add(
                ProblemCatalogue.UnknownUnit,
                text.At(number.Length + written.Length - written.TrimStart().Length, symbol.Length),
                UnitScanner.Fault(symbol));
            return null;
        }

        if (written == " " + symbol)
        {
            return new Quantity(number.Value, unit);
        }

        problems.Add(
            ProblemCatalogue.NumberNotReadable,
            text.At(0, text.Value.Length),
            $"'{Excerpt.Of(text.Value)}' is not a quantity as packs write it: write '{Excerpt.Of($"{text.Value[..number.Length]} {symbol}")}', with one space before the unit.");
        return null;
    }

    /// <summary>A unit by itself, or <see langword="null"/> after reporting.</summary>
    public static Unit? ReadUnit(PlacedText text, ProblemSink problems)
    {
        if (UnitScanner.TryGet(text.Value, out var unit))
        {
            return unit;
        }

        problems.Add(ProblemCatalogue.UnknownUnit, text.At(0, text.Value.Length), UnitScanner.Fault(text.Value));
        return null;
    }
}
