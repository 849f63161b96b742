using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class OrificeFlow() : Calculation(
    name: "orifice-flow",
    title: "Flow through a small hole.",
    takes:
    [
        Input.Positive("diameter", "mm", "diameter of the hole"),
        Input.NotNegative("drop", "bar", "pressure before it less pressure behind it"),
        Input.Positive("density", "kg/m3", "density of the oil", ifLeftOut: 870),
        Input.Between(0.4, 1, "coefficient", "number", "discharge coefficient: 0.6 to 0.65 for a sharp edge, 0.8 for a rounded one", ifLeftOut: 0.62),
    ],
    gives: "L/min",
    formula: "coefficient * pi / 4 * diameter^2 * sqrt(2 * drop / density)",
    source: "Bernoulli with a discharge coefficient; hydraulics handbooks",
    range: "Short sharp holes and thin oil; with cold oil or long holes less flows. The coefficient is good to 5 %")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        given[3] * Circle.Area(given[0]) * Math.Sqrt(2 * given[1] / given[2]);
}
