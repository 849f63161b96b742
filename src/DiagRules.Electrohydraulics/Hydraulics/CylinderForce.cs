using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class CylinderForce() : Calculation(
    name: "cylinder-force",
    title: "Force with which a cylinder pushes.",
    takes:
    [
        Input.NotNegative("pressure", "bar", "gauge pressure on the full bore"),
        Input.Positive("bore", "mm", "bore of the cylinder; of a plunger ram the diameter of the plunger"),
    ],
    gives: "N",
    formula: "pressure * pi / 4 * bore^2",
    source: "Pascal's law; US Army TM 1-1500-204-23-2 pp. 2-2 and 2-3",
    range: "No pressure on the rod side. Friction of the seals takes 2 to 10 % off while it moves")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * Circle.Area(given[1]);
}
