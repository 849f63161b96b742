using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Motors;

internal sealed class MotorSpeed() : Calculation(
    name: "motor-speed",
    title: "Speed of a permanent-magnet motor from its volts and current.",
    takes:
    [
        Input.Any("volts", "V", "volts at the motor's studs"),
        Input.Any("current", "A", "current of the motor"),
        Input.Positive("resistance", "ohm", "resistance of the winding with brushes, stud to stud"),
        Input.Positive("emf-constant", "V/rpm", "back emf per speed, from the data sheet or emf-constant"),
    ],
    gives: "rpm",
    formula: "(volts - current * resistance) / emf-constant",
    source: "Law of induction at constant field",
    range: "Permanent-magnet motors; within 5 % if resistance and constant belong to the temperature of the moment")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => (given[0] - (given[1] * given[2])) / given[3];
}
