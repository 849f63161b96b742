namespace DiagRules.Electrohydraulics.Hydraulics;

internal static class Circle
{
    public static double Area(double diameter) => Math.PI / 4 * diameter * diameter;
}
