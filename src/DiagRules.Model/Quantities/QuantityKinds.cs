using System.Globalization;
using System.Text;

namespace DiagRules.Model.Quantities;

/// <summary>Names and SI symbols of dimensions.</summary>
internal static class QuantityKinds
{
    private static readonly Dictionary<Dimension, (string Name, string SiSymbol)> Named = new()
    {
        [Dimension.None] = ("number", "number"),
        [Dimensions.Length] = ("length", "m"),
        [Dimensions.Mass] = ("mass", "kg"),
        [Dimensions.Time] = ("time", "s"),
        [Dimensions.Current] = ("current", "A"),
        [Dimensions.Temperature] = ("temperature difference", "K"),
        [Dimensions.Angle] = ("angle", "rad"),
        [Dimensions.Area] = ("area", "m2"),
        [Dimensions.Volume] = ("volume", "m3"),
        [Dimensions.Frequency] = ("frequency", "Hz"),
        [Dimensions.Rotation] = ("speed of rotation", "rad/s"),
        [Dimensions.Speed] = ("speed", "m/s"),
        [Dimensions.Acceleration] = ("acceleration", "m/s2"),
        [Dimensions.Flow] = ("flow", "m3/s"),
        [Dimensions.Displacement] = ("volume per turn", "m3/rad"),
        [Dimensions.Density] = ("density", "kg/m3"),
        [Dimensions.Force] = ("force", "N"),
        [Dimensions.Pressure] = ("pressure", "Pa"),
        [Dimensions.Energy] = ("energy", "J"),
        [Dimensions.Torque] = ("torque", "N.m"),
        [Dimensions.Power] = ("power", "W"),
        [Dimensions.DynamicViscosity] = ("dynamic viscosity", "Pa.s"),
        [Dimensions.KinematicViscosity] = ("kinematic viscosity", "m2/s"),
        [Dimensions.Charge] = ("charge", "C"),
        [Dimensions.Voltage] = ("voltage", "V"),
        [Dimensions.Resistance] = ("resistance", "ohm"),
        [Dimensions.Conductance] = ("conductance", "S"),
        [Dimensions.Capacitance] = ("capacitance", "F"),
        [Dimensions.Inductance] = ("inductance", "H"),
        [Dimensions.Resistance / Dimensions.Length] = ("resistance per length", "ohm/m"),
        [Dimensions.Resistance * Dimensions.Length] = ("resistivity", "ohm.m"),
        [Dimensions.Voltage / Dimensions.Rotation] = ("voltage per speed", "V.s/rad"),
        [Dimensions.Pressure / Dimensions.Time] = ("pressure per time", "Pa/s"),
        [Dimensions.Voltage / Dimensions.Time] = ("voltage per time", "V/s"),
        [Dimensions.Temperature / Dimensions.Time] = ("temperature per time", "K/s"),
        [Dimension.None / Dimensions.Volume] = ("number per volume", "number/m3"),
        [Dimension.None / Dimensions.Temperature] = ("share per temperature", "number/K"),
    };

    public static string NameOf(Dimension dimension) =>
        Named.TryGetValue(dimension, out var named) ? named.Name : $"quantity in {SiSymbolOf(dimension)}";

    public static string SiSymbolOf(Dimension dimension) =>
        Named.TryGetValue(dimension, out var named) ? named.SiSymbol : Product(dimension);

    /// <summary>Base units with positive exponents, then one division sign for each of those with negative ones: <c>m.A/s/s</c>.</summary>
    private static string Product(Dimension dimension)
    {
        ReadOnlySpan<(string Symbol, int Exponent)> powers =
        [
            ("kg", dimension.Mass), ("m", dimension.Length), ("A", dimension.Current),
            ("K", dimension.Temperature), ("rad", dimension.Angle), ("s", dimension.Time),
        ];
        var text = new StringBuilder();
        foreach (var (symbol, exponent) in powers)
        {
            for (var i = 0; i < exponent; i++)
            {
                text.Append(CultureInfo.InvariantCulture, $"{(text.Length == 0 ? "" : ".")}{symbol}");
            }
        }

        if (text.Length == 0)
        {
            text.Append(Unit.Number.Symbol);
        }

        foreach (var (symbol, exponent) in powers)
        {
            for (var i = 0; i > exponent; i--)
            {
                text.Append(CultureInfo.InvariantCulture, $"/{symbol}");
            }
        }

        return text.ToString();
    }
}
