using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class BulkModulus() : Calculation(
    name: "bulk-modulus",
    title: "Stiffness of oil with free air in it.",
    takes:
    [
        Input.Positive("liquid", "GPa", "bulk modulus of the oil without air, 1.4 to 1.9 GPa"),
        Input.Between(0, 20, "air", "%", "free air as a share of the volume of oil, at the pressure of the air around"),
        Input.NotNegative("pressure", "bar", "gauge pressure; it is turned into absolute pressure inside"),
        Input.Between(0.5, 1.2, "atmosphere", "bar", "absolute pressure of the air around", ifLeftOut: 1.01325),
    ],
    gives: "GPa",
    formula: "(1 + a) / (1 / liquid + a / (1.4 * p)) with p = pressure + atmosphere and a = air * atmosphere / p",
    source: "Series stiffness of oil and air: volume of the air by Boyle, stiffness of the air 1.4 * p (quick change); hydraulics handbooks",
    range: "No air dissolving, so too soft above some 50 bar; within 10 % below that")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given)
    {
        var pressure = given[2] + given[3];
        var air = given[1] * given[3] / pressure;
        return (1 + air) / ((1 / given[0]) + (air / (1.4 * pressure)));
    }
}
