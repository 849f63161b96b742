using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class CylinderPressure() : Calculation(
    name: "cylinder-pressure",
    title: "Pressure a cylinder needs to push with a force.",
    takes:
    [
        Input.NotNegative("force", "N", "force on the rod"),
        Input.Positive("bore", "mm", "bore of the cylinder; of a plunger ram the diameter of the plunger"),
    ],
    gives: "bar",
    formula: "force / (pi / 4 * bore^2)",
    source: "Pascal's law; OpenStax College Physics 11.5",
    range: "Gauge pressure, no pressure on the rod side; friction adds 2 to 10 % while it moves")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] / Circle.Area(given[1]);
}
