namespace DiagRules.Model.Quantities;

/// <summary>
/// The kind of a quantity as exponents of base dimensions (ISO 80000-1). Immutable value; the default is a bare number.
/// </summary>
/// <remarks>
/// Plane angle counts as a base dimension here, so that torque (energy per angle) is not energy, and turns per minute are
/// not hertz. A temperature point (<c>degC</c>) has the dimension of temperature too; <see cref="Unit.IsPoint"/> tells it
/// from a difference.
/// </remarks>
/// <param name="Length">Exponent of length.</param>
/// <param name="Mass">Exponent of mass.</param>
/// <param name="Time">Exponent of time.</param>
/// <param name="Current">Exponent of electric current.</param>
/// <param name="Temperature">Exponent of thermodynamic temperature.</param>
/// <param name="Angle">Exponent of plane angle.</param>
public readonly record struct Dimension(
    sbyte Length = 0, sbyte Mass = 0, sbyte Time = 0, sbyte Current = 0, sbyte Temperature = 0, sbyte Angle = 0)
{
    /// <summary>A bare number; percent too.</summary>
    public static Dimension None => default;

    /// <summary>Whether this is a bare number.</summary>
    public bool IsNone => this == default;

    /// <summary>
    /// The kind of quantity in a word or two, for messages: <c>voltage</c>, <c>pressure</c>, <c>speed of rotation</c>. What has
    /// no name of its own is called by its SI unit: <c>quantity in m.A</c>.
    /// </summary>
    public string Kind => QuantityKinds.NameOf(this);

    /// <summary>Symbol of the coherent SI unit, e.g. <c>V</c>, <c>m3/s</c>; <see cref="UnitTable"/> reads it. <c>number</c> for a bare number.</summary>
    public string SiSymbol => QuantityKinds.SiSymbolOf(this);

    /// <inheritdoc/>
    public override string ToString() => Kind;

    /// <summary>The dimension of a product.</summary>
    public static Dimension operator *(Dimension left, Dimension right) => new(
        Held(left.Length + right.Length),
        Held(left.Mass + right.Mass),
        Held(left.Time + right.Time),
        Held(left.Current + right.Current),
        Held(left.Temperature + right.Temperature),
        Held(left.Angle + right.Angle));

    /// <summary>The dimension of a quotient.</summary>
    public static Dimension operator /(Dimension left, Dimension right) => new(
        Held(left.Length - right.Length),
        Held(left.Mass - right.Mass),
        Held(left.Time - right.Time),
        Held(left.Current - right.Current),
        Held(left.Temperature - right.Temperature),
        Held(left.Angle - right.Angle));

    /// <summary>A product of a hundred volts is nonsense; held at the end of the scale it stays so and never wraps round to a length.</summary>
    private static sbyte Held(int exponent) => (sbyte)Math.Clamp(exponent, sbyte.MinValue, sbyte.MaxValue);
}
