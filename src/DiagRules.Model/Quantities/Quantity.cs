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

    /// <summary>The same quantity in another unit of its dimension.</summary>
    /// <exception cref="ArgumentException"><paramref name="unit"/> measures something else, or one is a point on a temperature scale and the other a difference.</exception>
    public Quantity In(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return unit.Dimension == Unit.Dimension && unit.IsPoint == Unit.IsPoint
            ? FromSi(Si, unit)
            : throw new ArgumentException($"'{this}' is a {Unit.Kind} and '{unit}' measures {unit.Kind}.", nameof(unit));
    }

    /// <summary>Rounded to so many significant digits, halves away from zero; whole numbers keep all digits before the point.</summary>
    /// <param name="digits">Significant digits, 1 to 15; four are what workshop meters show.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="digits"/> is outside 1 to 15.</exception>
    public Quantity Rounded(int digits = 4)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(digits, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(digits, 15);
        return this with { Value = PlainNumber.Round(Value, digits) };
    }

    /// <summary>Number, one space, unit, with a decimal point whatever the culture: <c>12.4 V</c>. Packs can read it back.</summary>
    public override string ToString() => ToString(CultureInfo.InvariantCulture);

    /// <summary>Number, one space, unit, with the decimal sign of <paramref name="provider"/>; at most seven significant digits, no grouping.</summary>
    /// <remarks>A value beyond the meter's range reads <c>over range</c> or <c>under range</c>; NaN reads <c>unknown</c>.</remarks>
    public string ToString(IFormatProvider provider)
    {
        var number = double.IsPositiveInfinity(Value) ? "over range"
            : double.IsNegativeInfinity(Value) ? "under range"
            : double.IsNaN(Value) ? "unknown"
            : PlainNumber.Write(Value, provider);
        return double.IsFinite(Value) && Unit.Symbol != Unit.Number.Symbol ? $"{number} {Unit.Symbol}" : number;
    }
}
