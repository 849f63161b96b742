using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class OrificeDrop() : Calculation(
    name: "orifice-drop",
    title: "Pressure lost in a small hole.",
    takes:
    [
        Input.Positive("diameter", "mm", "diameter of the hole"),
        Input.NotNegative("flow", "L/min", "flow through it"),
        Input.Positive("density", "kg/m3", "density of the oil", ifLeftOut: 870),
        Input.Between(0.4, 1, "coefficient", "number", "discharge coefficient: 0.6 to 0.65 for a sharp edge, 0.8 for a rounded one", ifLeftOut: 0.62),
    ],
    gives: "bar",
    formula: "density / 2 * (flow / (coefficient * pi / 4 * diameter^2))^2",
    source: "Bernoulli with a discharge coefficient; hydraulics handbooks",
    range: "Short sharp holes and thin oil; with cold oil or long holes more is lost. The coefficient is good to 5 %, the answer to 10 %")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given)
    {
        var speed = given[1] / (given[3] * Circle.Area(given[0]));
        return given[2] / 2 * speed * speed;
    }
}
