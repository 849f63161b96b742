namespace DiagRules.Electrohydraulics.Copper;

/// <summary>ISO 6722-1, largest resistance of copper conductors at 20 degC.</summary>
internal static class VehicleCable
{
    private static readonly SortedList<double, double> Table = new()
    {
        [0.5] = 37.1,
        [0.75] = 24.7,
        [1] = 18.5,
        [1.5] = 12.7,
        [2.5] = 7.60,
        [4] = 4.71,
        [6] = 3.14,
        [10] = 1.82,
        [16] = 1.16,
        [25] = 0.743,
        [35] = 0.527,
        [50] = 0.368,
    };

    /// <returns>Why there is no value, or <see langword="null"/>.</returns>
    /// <param name="area">Nominal size in m2.</param>
    /// <param name="value">Milliohm per metre at 20 degC.</param>
    public static string? MohmPerMetre(double area, out double value) => NominalSizes.Find(Table, area, out value);
}
