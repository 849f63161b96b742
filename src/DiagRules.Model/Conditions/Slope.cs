namespace DiagRules.Model.Conditions;

/// <summary>A value and its rate of change against one measured reading (a dual number). Immutable value.</summary>
/// <param name="Value">Value in SI; NaN when unknown, an infinity only for a reading beyond its meter's range.</param>
/// <param name="Rate">Partial derivative against the seeded reading, in SI units; 0 without a seed.</param>
public readonly record struct Slope(double Value, double Rate)
{
    /// <summary>Nothing is known.</summary>
    public static Slope Unknown => new(double.NaN, 0);
}
