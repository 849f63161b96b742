using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class CylinderTime() : Calculation(
    name: "cylinder-time",
    title: "Time a cylinder takes to extend.",
    takes:
    [
        Input.Positive("bore", "mm", "bore of the cylinder; of a plunger ram the diameter of the plunger"),
        Input.NotNegative("stroke", "mm", "how far it travels"),
        Input.Positive("flow", "L/min", "flow that reaches it"),
    ],
    gives: "s",
    formula: "pi / 4 * bore^2 * stroke / flow",
    source: "Volume over flow; US Army TM 1-1500-204-23-2 p. 2-2",
    range: "Full bore, oil taken as incompressible; several cylinders on one pump share its flow")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => Circle.Area(given[0]) * given[1] / given[2];
}
