using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class PumpMotorCurrent() : Calculation(
    name: "pump-motor-current",
    title: "Current the motor of a pump unit draws for a shaft power.",
    takes:
    [
        Input.NotNegative("power", "kW", "power at the shaft"),
        Input.Positive("volts", "V", "volts at the motor's studs under load"),
        Input.Between(1, 100, "efficiency", "%", "efficiency of the motor; small brushed motors have 55 to 75 %"),
    ],
    gives: "A",
    formula: "power / (volts * efficiency)",
    source: "Electric power is volts times amperes",
    range: "Running, not starting: see locked-rotor-current")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] / (given[1] * given[2]);
}
