using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class CylinderForceIn() : Calculation(
    name: "cylinder-force-in",
    title: "Force with which a cylinder pulls.",
    takes:
    [
        Input.NotNegative("pressure", "bar", "gauge pressure on the rod side"),
        Input.Positive("bore", "mm", "bore of the cylinder; of a plunger ram the diameter of the plunger"),
        Input.NotNegative("rod", "mm", "diameter of the rod"),
    ],
    gives: "N",
    formula: "pressure * pi / 4 * (bore^2 - rod^2)",
    source: "Pascal's law",
    range: "No pressure on the full bore. Friction of the seals takes 2 to 10 % off while it moves")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        given[2] < given[1]
            ? given[0] * (Circle.Area(given[1]) - Circle.Area(given[2]))
            : Because("the rod is as thick as the bore: a plunger ram cannot pull");
}
