using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class CylinderVolume() : Calculation(
    name: "cylinder-volume",
    title: "Oil a cylinder takes in to extend.",
    takes:
    [
        Input.Positive("bore", "mm", "bore of the cylinder; of a plunger ram the diameter of the plunger"),
        Input.NotNegative("stroke", "mm", "how far it travels"),
    ],
    gives: "mL",
    formula: "pi / 4 * bore^2 * stroke",
    source: "US Army TM 1-1500-204-23-2 p. 2-2",
    range: "Full bore")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => Circle.Area(given[0]) * given[1];
}
