using DiagRules.Model.Quantities;

namespace DiagRules.Model.Conditions;

/// <summary>What a term measures. Immutable value.</summary>
/// <param name="Dimension">The dimension.</param>
/// <param name="IsPoint">Whether it is a point on the temperature scale rather than a difference.</param>
/// <param name="Unit">A unit to show it in, as written nearby; for messages only.</param>
public readonly record struct TermType(Dimension Dimension, bool IsPoint, string Unit)
{
    /// <summary>The type of values in <paramref name="unit"/>.</summary>
    public static TermType Of(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return new(unit.Dimension, unit.IsPoint, unit.Symbol);
    }
}
