using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Reads money: <c>84 EUR/h</c>, <c>2 EUR</c>; where costs are meant a bare number is minutes' worth.</summary>
internal static class MoneyReader
{
    private const string PerHour = "/h";

    /// <summary>Money for an hour, or <see langword="null"/> after reporting.</summary>
    public static Money? ReadRate(PlacedText text, ProblemSink problems)
    {
        if (Split(text, problems) is not var (amount, unit))
        {
            return null;
        }

        if (unit.EndsWith(PerHour, StringComparison.Ordinal) && IsCurrency(unit[..^PerHour.Length]))
        {
            return new Money(amount, unit[..^PerHour.Length]);
        }

        Report(text, unit.Length == 0 || IsCurrency(unit) ? ProblemCatalogue.UnitMissing : ProblemCatalogue.UnknownUnit,
            $"'{Excerpt.Of(text.Value)}' is not money for an hour; write the amount and the currency in three capital letters, such as '84 EUR/h'.", problems);
        return null;
    }

    /// <summary>A cost and its currency, which is <see langword="null"/> for a bare number; <see langword="null"/> after reporting.</summary>
    public static (Expense Expense, string? Currency)? ReadExpense(PlacedText text, ProblemSink problems)
    {
        if (Split(text, problems) is not var (amount, unit))
        {
            return null;
        }

        if (unit.Length == 0)
        {
            return (new Expense(amount, 0), null);
        }

        if (IsCurrency(unit))
        {
            return (new Expense(0, amount), unit);
        }

        Report(text, ProblemCatalogue.UnknownUnit,
            $"'{Excerpt.Of(text.Value)}' is not a cost; " +
            "write the amount and the currency in three capital letters, such as '2 EUR', or a bare number for minutes' worth.", problems);
        return null;
    }

    private static (double Amount, string Unit)? Split(PlacedText text, ProblemSink problems)
    {
        if (SignedNumber.Read(text, problems) is not { } number)
        {
            return null;
        }

        if (number.Value < 0)
        {
            Report(text, ProblemCatalogue.NumberNotReadable, $"'{Excerpt.Of(text.Value)}' is below zero; costs are 0 or more.", problems);
            return null;
        }

        var unit = text.Value[number.Length..];
        if (unit.Length == 0 || (unit.Length > 1 && unit[0] == ' ' && unit[1] != ' '))
        {
            return (number.Value, unit.Length == 0 ? "" : unit[1..]);
        }

        var spelling = Excerpt.Of($"{text.Value[..number.Length]} {unit.Trim()}");
        Report(text, ProblemCatalogue.NumberNotReadable, $"'{Excerpt.Of(text.Value)}' is not an amount as packs write it: write '{spelling}', with one space.", problems);
        return null;
    }

    private static bool IsCurrency(string unit) => unit.Length == 3 && unit.All(char.IsAsciiLetterUpper);

    private static void Report(PlacedText text, ProblemDescriptor descriptor, string message, ProblemSink problems) =>
        problems.Add(descriptor, text.At(0, text.Value.Length), message);
}
