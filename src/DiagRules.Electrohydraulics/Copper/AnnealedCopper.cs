namespace DiagRules.Electrohydraulics.Copper;

/// <summary>International annealed copper standard, IEC 60028:1925.</summary>
internal static class AnnealedCopper
{
    /// <summary>0.017241 ohm mm2/m at 20 degC, in ohm m.</summary>
    public const double Resistivity = 0.017241e-6;

    /// <summary>Change of resistance per kelvin, as a share of that at 20 degC.</summary>
    public const double TemperatureCoefficient = 0.00393;

    /// <summary>20 degC in kelvin.</summary>
    public const double ReferenceTemperature = 293.15;

    /// <summary>
    /// Kelvin to add to a temperature in kelvin so that resistance is proportional to the sum: copper behaves as if it had
    /// no resistance at -234.5 degC.
    /// </summary>
    private const double ZeroShift = 234.5 - 273.15;

    /// <summary>Resistance at a temperature in kelvin, as a multiple of that at 20 degC.</summary>
    public static double Factor(double temperature) => 1 + (TemperatureCoefficient * (temperature - ReferenceTemperature));

    /// <summary>Resistance at one temperature in kelvin, as a multiple of that at another.</summary>
    public static double Factor(double from, double to) => (to + ZeroShift) / (from + ZeroShift);

    /// <summary>Temperature in kelvin at which the resistance is <paramref name="factor"/> times that at <paramref name="from"/>.</summary>
    public static double Temperature(double from, double factor) => (factor * (from + ZeroShift)) - ZeroShift;
}
