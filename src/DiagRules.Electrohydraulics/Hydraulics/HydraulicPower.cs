using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class HydraulicPower() : Calculation(
    name: "hydraulic-power",
    title: "Power in a flow of oil.",
    takes:
    [
        Input.NotNegative("pressure", "bar", "gauge pressure"),
        Input.NotNegative("flow", "L/min", "flow of the oil"),
    ],
    gives: "kW",
    formula: "pressure * flow",
    source: "Pressure times flow; the handbook form is bar * L/min / 600 in kW",
    range: "Gauge pressure against a tank at the pressure of the air")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * given[1];
}
