using System.Diagnostics.CodeAnalysis;

namespace DiagRules.Model.Quantities;

/// <summary>The units packs may use: SI-coherent and workshop units, and products of them. Thread-safe.</summary>
/// <remarks>Compound symbols join known ones with <c>/</c> or <c>.</c> and are read from left to right: <c>mL/min</c>, <c>ohm.m</c>.</remarks>
public static class UnitTable
{
    private static readonly Dictionary<string, Unit> Units = Build();

    /// <summary>All simple symbols, in alphabetical order.</summary>
    public static IReadOnlyList<string> Symbols { get; } = [.. Units.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Looks a symbol up; compound symbols too.</summary>
    /// <returns><see langword="false"/> when some part of the symbol is not known.</returns>
    public static bool TryGet(string symbol, [NotNullWhen(true)] out Unit? unit)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        if (Units.TryGetValue(symbol, out unit))
        {
            return true;
        }

        unit = Compound(symbol);
        return unit is not null;
    }

    private static Unit? Compound(string symbol)
    {
        var dimension = Dimension.None;
        double multiplier = 1, divisor = 1;
        var start = 0;
        var divides = false;
        for (var i = 0; i <= symbol.Length; i++)
        {
            if (i < symbol.Length && symbol[i] is not ('/' or '.'))
            {
                continue;
            }

            if (!Units.TryGetValue(symbol[start..i], out var part) || part.IsPoint)
            {
                return null;
            }

            dimension = divides ? dimension / part.Dimension : dimension * part.Dimension;
            multiplier *= divides ? part.Divisor : part.Multiplier;
            divisor *= divides ? part.Multiplier : part.Divisor;
            divides = i < symbol.Length && symbol[i] == '/';
            start = i + 1;
        }

        return new Unit(symbol, dimension, multiplier, divisor);
    }

    private static Dictionary<string, Unit> Build()
    {
        var length = new Dimension(Length: 1);
        var area = length * length;
        var volume = area * length;
        var mass = new Dimension(Mass: 1);
        var time = new Dimension(Time: 1);
        var current = new Dimension(Current: 1);
        var temperature = new Dimension(Temperature: 1);
        var angle = new Dimension(Angle: 1);
        var force = mass * length / (time * time);
        var energy = force * length;
        var power = energy / time;
        var voltage = power / current;
        var pressure = force / area;

        Unit[] units =
        [
            Unit.Number,
            new("%", Dimension.None, 1, 100),
            new("V", voltage), new("mV", voltage, 1, 1e3), new("kV", voltage, 1e3),
            new("A", current), new("mA", current, 1, 1e3), new("uA", current, 1, 1e6), new("kA", current, 1e3),
            new("ohm", voltage / current), new("mohm", voltage / current, 1, 1e3),
            new("kohm", voltage / current, 1e3), new("Mohm", voltage / current, 1e6),
            new("W", power), new("kW", power, 1e3),
            new("J", energy), new("kJ", energy, 1e3), new("Wh", energy, 3600), new("kWh", energy, 3.6e6),
            new("Ah", current * time, 3600), new("C", current * time),
            new("N", force), new("kN", force, 1e3),
            new("N.m", energy / angle),
            new("Pa", pressure), new("kPa", pressure, 1e3), new("MPa", pressure, 1e6), new("bar", pressure, 1e5),
            new("mbar", pressure, 100), new("psi", pressure, 6894.757293168361),
            new("m", length), new("mm", length, 1, 1e3), new("cm", length, 1, 100), new("km", length, 1e3), new("in", length, 254, 1e4),
            new("m2", area), new("cm2", area, 1, 1e4), new("mm2", area, 1, 1e6),
            new("m3", volume), new("L", volume, 1, 1e3), new("mL", volume, 1, 1e6), new("cm3", volume, 1, 1e6),
            new("kg", mass), new("g", mass, 1, 1e3), new("t", mass, 1e3),
            new("s", time), new("ms", time, 1, 1e3), new("min", time, 60), new("h", time, 3600),
            new("rad", angle), new("deg", angle, Math.PI, 180),
            new("rpm", angle / time, 2 * Math.PI, 60), new("Hz", Dimension.None / time),
            new("K", temperature), new("degC", temperature, 1, 1, 273.15, isPoint: true),
        ];

        return units.ToDictionary(unit => unit.Symbol, StringComparer.Ordinal);
    }
}
