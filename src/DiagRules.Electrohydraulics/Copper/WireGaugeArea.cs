using DiagRules.Electrohydraulics.Hydraulics;
using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Copper;

internal sealed class WireGaugeArea() : Calculation(
    name: "wire-gauge-area",
    title: "Metal area of a solid wire of American gauge.",
    takes:
    [
        Input.Between(-3, 40, "gauge", "number", "gauge; 1/0 is 0, 2/0 is -1, 3/0 is -2, 4/0 is -3"),
    ],
    gives: "mm2",
    formula: "pi / 4 * (0.127 mm * 92^((36 - gauge) / 39))^2",
    source: "ASTM B258",
    range: "Solid round wire; stranded wire of the gauge has the same metal area within 2 %")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => Circle.Area(0.127e-3 * Math.Pow(92, (36 - given[0]) / 39));
}
