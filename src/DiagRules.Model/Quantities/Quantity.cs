using System.Globalization;

namespace DiagRules.Model.Quantities;

/// <summary>A number with its unit, as somebody wrote it. Immutable value.</summary>
/// <remarks>Equality is that of value and unit as written: <c>1 V</c> and <c>1000 mV</c> differ, their <see cref="Si"/> does not.</remarks>
/// <param name="Value">The number in <paramref name="Unit"/>; finite, except for readings beyond the meter's range (infinities).</param>
/// <param name="Unit">The unit.</param>
public readonly record struct Quantity(double Value, Unit Unit)
{
    /// <summary>The value in the coherent SI unit.</summary>
    public double Si => Unit.ToSi(Value);

    /// <summary>A value given in SI, expressed in <paramref name="unit"/>.</summary>
    public static Quantity FromSi(double si, Unit unit) => new(unit.FromSi(si), unit);

    /// <summary>Number, one space, unit, with a decimal point whatever the culture: <c>12.4 V</c>.</summary>
    public override string ToString() => ToString(CultureInfo.InvariantCulture);

    /// <summary>Number, one space, unit, with the decimal sign of <paramref name="provider"/>.</summary>
    public string ToString(IFormatProvider provider)
    {
        var number = double.IsPositiveInfinity(Value) ? "over range"
            : double.IsNegativeInfinity(Value) ? "under range"
            : Math.Abs(Value) is >= 1e-4 and < 1e7 || Value == 0 ? Value.ToString("0.######", provider)
            : Value.ToString("G7", provider);
        return Unit.Dimension.IsNone && Unit.Symbol == Unit.Number.Symbol ? number : $"{number} {Unit.Symbol}";
    }
}
