using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Motors;

internal sealed class MotorTorque() : Calculation(
    name: "motor-torque",
    title: "Torque a permanent-magnet motor makes from its current.",
    takes:
    [
        Input.NotNegative("torque-constant", "N.m/A", "torque per current; the same number as the back emf in V.s/rad"),
        Input.Any("current", "A", "current of the motor"),
    ],
    gives: "N.m",
    formula: "torque-constant * current",
    source: "Force on a current in a constant field",
    range: "Permanent-magnet motors; friction and iron take up to 10 % of it")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * given[1];
}
