using DiagRules.Model.Conditions;
using DiagRules.Model.Quantities;

namespace DiagRules.Model;

/// <summary>A number with a unit, measured or derived. Immutable.</summary>
public sealed record Reading : Entry
{
    /// <summary>What to measure, or <see langword="null"/> for a derived reading.</summary>
    public string? Question { get; init; }

    /// <summary>Unit it is shown in; of a derived one the unit its terms suggest.</summary>
    public required Unit Unit { get; init; }

    /// <summary>A value outside is taken for a slip of the pen; <see langword="null"/> when anything goes.</summary>
    public QuantityRange? Plausible { get; init; }

    /// <summary>How far the meter may be off; <see langword="null"/> when not stated.</summary>
    public Accuracy? Accuracy { get; init; }

    /// <summary>Whether it can be measured though the fault does not show itself at that moment.</summary>
    public bool IsLasting { get; init; }

    /// <summary>How it derives from other readings, or <see langword="null"/> for a measured one.</summary>
    public Term? From { get; init; }

    /// <summary>
    /// Whether a value may be right; one that is not is kept on record and used for nothing. Beyond the meter's range is plausible.
    /// </summary>
    public bool IsPlausible(Quantity value) => Plausible is not { } range || !double.IsFinite(value.Value) || range.Contains(value.Si);
}

/// <summary>A closed range.</summary>
/// <param name="Least">Least value.</param>
/// <param name="Most">Greatest value.</param>
public readonly record struct QuantityRange(Quantity Least, Quantity Most)
{
    /// <summary>Whether a value in SI lies within, ends included.</summary>
    public bool Contains(double si) => si >= Least.Si && si <= Most.Si;

    /// <summary><c>0 V .. 32 V</c>.</summary>
    public override string ToString() => $"{Least} .. {Most}";
}

/// <summary>The limit of error a meter states: a fraction of the reading plus a fixed part.</summary>
/// <param name="Relative">Fraction of the reading, 0.005 for <c>0.5 %</c>.</param>
/// <param name="Fixed">Fixed part as a width in SI.</param>
public readonly record struct Accuracy(double Relative, double Fixed)
{
    /// <summary>
    /// Standard uncertainty at a value, both in SI: the limits are those of a rectangular distribution, so limit / sqrt(3)
    /// (JCGM 100:2008, 4.3.7).
    /// </summary>
    public double StandardUncertainty(double si) => ((Relative * Math.Abs(si)) + Fixed) / Math.Sqrt(3);
}
