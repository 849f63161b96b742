using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class CylinderTimeIn() : Calculation(
    name: "cylinder-time-in",
    title: "Time a cylinder takes to retract under power.",
    takes:
    [
        Input.Positive("bore", "mm", "bore of the cylinder; of a plunger ram the diameter of the plunger"),
        Input.NotNegative("rod", "mm", "diameter of the rod"),
        Input.NotNegative("stroke", "mm", "how far it travels"),
        Input.Positive("flow", "L/min", "flow that reaches it"),
    ],
    gives: "s",
    formula: "pi / 4 * (bore^2 - rod^2) * stroke / flow",
    source: "Volume over flow",
    range: "Rod side, oil taken as incompressible; several cylinders on one pump share its flow")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        given[1] < given[0]
            ? (Circle.Area(given[0]) - Circle.Area(given[1])) * given[2] / given[3]
            : Because("the rod is as thick as the bore: a plunger ram is not retracted by the pump");
}
