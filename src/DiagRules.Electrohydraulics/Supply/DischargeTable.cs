namespace DiagRules.Electrohydraulics.Supply;

/// <summary>
/// Flooded 12 V lead-acid batteries, flat to full in quarters, as encyclopaedia text prints them. The US Army's table
/// (TM 5-3805-262-20 p. 5-142) has 11.7, 12.0, 12.2, 12.4 and 12.6 V.
/// </summary>
internal static class DischargeTable
{
    /// <summary>Volts at rest, 25 degC.</summary>
    public static ReadOnlySpan<double> Volts => [11.89, 12.06, 12.24, 12.45, 12.65];

    /// <summary>Density of the electrolyte in kg/m3, 80 degF.</summary>
    public static ReadOnlySpan<double> Densities => [1120, 1155, 1190, 1225, 1265];

    /// <summary>What to add to a hydrometer reading at a temperature in kelvin: 0.004 kg/L for every 10 degF above 80 degF.</summary>
    public static double DensityCorrection(double temperature)
    {
        const double EightyFahrenheit = (80 + 459.67) * 5 / 9;
        return 4 * (temperature - EightyFahrenheit) * 9 / 5 / 10;
    }

    /// <summary>State of charge, 0 to 1, by straight lines between the rows; level beyond them.</summary>
    public static double Charge(ReadOnlySpan<double> rows, double value)
    {
        if (value <= rows[0])
        {
            return 0;
        }

        for (var i = 1; i < rows.Length; i++)
        {
            if (value < rows[i])
            {
                return (i - 1 + ((value - rows[i - 1]) / (rows[i] - rows[i - 1]))) / (rows.Length - 1);
            }
        }

        return 1;
    }
}
