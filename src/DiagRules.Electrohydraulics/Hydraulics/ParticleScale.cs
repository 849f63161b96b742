using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

/// <summary>ISO 4406: each number covers "more than" the limit before it "up to and including" its own, in particles per mL.</summary>
internal static class ParticleScale
{
    private static ReadOnlySpan<double> UpperLimits =>
    [
        0.01, 0.02, 0.04, 0.08, 0.16, 0.32, 0.64, 1.3, 2.5, 5, 10, 20, 40, 80, 160, 320, 640,
        1300, 2500, 5000, 10_000, 20_000, 40_000, 80_000, 160_000, 320_000, 640_000, 1_300_000, 2_500_000,
    ];

    public static CalculationResult Number(double count)
    {
        for (var number = 0; number < UpperLimits.Length; number++)
        {
            if (count <= UpperLimits[number])
            {
                return number;
            }
        }

        return CalculationResult.Because("there are more than 2.5 million particles per mL, beyond the last number of the scale");
    }
}
