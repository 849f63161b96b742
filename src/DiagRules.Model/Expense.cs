namespace DiagRules.Model;

/// <summary>A cost beside the minutes. Immutable value; the default is nothing.</summary>
/// <param name="MinutesWorth">A bare number of the pack: minutes' worth.</param>
/// <param name="Money">Money in the pack's currency, turned into minutes by the labour rate.</param>
public readonly record struct Expense(double MinutesWorth, double Money);
