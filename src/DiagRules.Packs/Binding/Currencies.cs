using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Reads money and sees to it that a pack keeps to one currency.</summary>
internal sealed class Currencies(ProblemSink problems)
{
    private string? _currency;
    private SourcePlace _place;
    private bool _hasRate;

    /// <summary>The currency of the pack, or <see langword="null"/> when it writes none.</summary>
    public string? Currency => _currency;

    /// <summary>Money for an hour; read before any cost.</summary>
    public double? ReadRate(PlacedText text)
    {
        if (MoneyReader.ReadRate(text, problems) is not { } rate)
        {
            _hasRate = true;
            return null;
        }

        _hasRate = true;
        Keep(rate.Currency, text);
        return rate.Amount;
    }

    public Expense? ReadCost(PlacedText text)
    {
        if (MoneyReader.ReadExpense(text, problems) is not var (expense, currency))
        {
            return null;
        }

        if (currency is null)
        {
            return expense;
        }

        if (!_hasRate)
        {
            problems.Add(
                ProblemCatalogue.RequiredKeyMissing,
                text.At(0, text.Value.Length),
                $"'{text.Value}' is money, and pack.yaml has no 'labour' to turn it into minutes; add for example 'labour: 84 {currency}/h', "
                + "or write minutes' worth.");
        }

        Keep(currency, text);
        return expense;
    }

    private void Keep(string currency, PlacedText text)
    {
        var place = text.At(0, text.Value.Length);
        if (_currency is null)
        {
            (_currency, _place) = (currency, place);
        }
        else if (_currency != currency)
        {
            problems.Add(
                ProblemCatalogue.TwoCurrencies,
                place,
                $"'{text.Value}' is in {currency}, and {_place} is in {_currency}; a pack keeps to one currency.");
        }
    }
}
