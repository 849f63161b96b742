using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class PumpShaftPower() : Calculation(
    name: "pump-shaft-power",
    title: "Power a pump takes from its shaft.",
    takes:
    [
        Input.NotNegative("pressure", "bar", "gauge pressure at the outlet"),
        Input.NotNegative("flow", "L/min", "flow it delivers"),
        Input.Between(1, 100, "efficiency", "%", "overall efficiency of the pump; small gear pumps have 65 to 85 %"),
    ],
    gives: "kW",
    formula: "pressure * flow / efficiency",
    source: "Usual formula of hydraulics handbooks",
    range: "Efficiency at the pressure and temperature of the moment")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * given[1] / given[2];
}
