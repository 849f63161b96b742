using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

/// <summary>ISO 3448 from VG 10 up, where the midpoint is the number of the class itself.</summary>
internal static class ViscosityClass
{
    private static ReadOnlySpan<double> Classes => [10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500];

    /// <summary>A share of the midpoint, in m2/s.</summary>
    public static CalculationResult At40(double number, double share) =>
        Classes.Contains(number)
            ? number * share / 1e6
            : CalculationResult.Because("'class' is not one of the ISO VG classes 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500");
}
