using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

/// <summary>The two systems vehicles have. Aircraft tables name them by the volts of the running generator, 14 and 28.</summary>
internal static class SupplySystem
{
    /// <param name="nominal">Nominal volts.</param>
    /// <param name="of12">Drop in the 12 V system; the 24 V system may lose twice that.</param>
    public static CalculationResult Drop(double nominal, double of12) => nominal switch
    {
        >= 12 and <= 14.5 => of12,
        >= 24 and <= 29 => 2 * of12,
        _ => CalculationResult.Because("'nominal' is neither a 12 V (14 V) nor a 24 V (28 V) system"),
    };
}
