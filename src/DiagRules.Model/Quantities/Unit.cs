namespace DiagRules.Model.Quantities;

/// <summary>A unit of measurement: a symbol, a dimension and its relation to the coherent SI unit. Immutable and thread-safe.</summary>
/// <remarks>
/// <para>Units come from <see cref="UnitTable"/>; those with the same symbol are equal.</para>
/// <para>The factor is kept as a quotient so that decimal multiples convert with a single rounding: <c>24200 mV</c> and
/// <c>24.2 V</c> are the same number. Where neither side of the quotient is 1 (<c>km/h</c>, <c>psi</c>) there are two
/// roundings, 2e-16 of the value each.</para>
/// </remarks>
public sealed class Unit : IEquatable<Unit>
{
    /// <summary>A bare number, written <c>number</c> in packs.</summary>
    public static readonly Unit Number = new("number", Dimension.None);

    internal Unit(string symbol, Dimension dimension, double multiplier = 1, double divisor = 1, double offset = 0, bool isPoint = false)
    {
        Symbol = symbol;
        Dimension = dimension;
        Multiplier = multiplier;
        Divisor = divisor;
        Offset = offset;
        IsPoint = isPoint;
    }

    /// <summary>The symbol as packs write it, e.g. <c>mL/min</c>. Case counts.</summary>
    public string Symbol { get; }

    /// <summary>What kind of quantity it measures.</summary>
    public Dimension Dimension { get; }

    /// <summary>Whether values are points on a scale (<c>degC</c>), which cannot be added to each other.</summary>
    public bool IsPoint { get; }

    /// <summary>The kind in a word or two for messages: <c>voltage</c>; <c>temperature</c> for a point, <c>temperature difference</c> for <c>K</c>.</summary>
    public string Kind => IsPoint ? "temperature" : Dimension.Kind;

    internal double Multiplier { get; }

    internal double Divisor { get; }

    internal double Offset { get; }

    /// <summary>Turns a value in this unit into the coherent SI unit (kelvin for temperatures).</summary>
    public double ToSi(double value) => (value * Multiplier / Divisor) + Offset;

    /// <summary>Turns a value in the coherent SI unit into this unit.</summary>
    public double FromSi(double value) => (value - Offset) * Divisor / Multiplier;

    /// <summary>Turns a width (an accuracy, a difference) in this unit into SI: the scale without its zero point.</summary>
    public double WidthToSi(double width) => width * Multiplier / Divisor;

    /// <summary>Turns a width in SI into this unit.</summary>
    public double WidthFromSi(double width) => width * Divisor / Multiplier;

    /// <inheritdoc/>
    public bool Equals(Unit? other) => other is not null && other.Symbol == Symbol;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Unit);

    /// <inheritdoc/>
    public override int GetHashCode() => Symbol.GetHashCode(StringComparison.Ordinal);

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
