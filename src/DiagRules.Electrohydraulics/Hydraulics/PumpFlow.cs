using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class PumpFlow() : Calculation(
    name: "pump-flow",
    title: "Flow a pump delivers.",
    takes:
    [
        Input.NotNegative("displacement", "cm3/rev", "volume per turn, from the plate"),
        Input.NotNegative("speed", "rpm", "speed of the shaft"),
        Input.Between(1, 100, "efficiency", "%", "volumetric efficiency; a sound gear pump has 85 to 95 %"),
    ],
    gives: "L/min",
    formula: "displacement * speed * efficiency",
    source: "Usual formula of hydraulics handbooks",
    range: "Efficiency at the pressure and temperature of the moment")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * given[1] * given[2];
}
