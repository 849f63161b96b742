namespace DiagRules.Electrohydraulics.Fuses;

/// <summary>DIN 72581-3, form E: the most volts across the fuse at its rated current.</summary>
internal static class MaxiFuseDrop
{
    public static double AtRatedCurrent(double rating) => rating > 20 ? 0.100 : 0.125;
}
