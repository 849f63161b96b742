using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Motors;

internal sealed class MotorBackEmf() : Calculation(
    name: "motor-back-emf",
    title: "Back emf of a running direct-current motor.",
    takes:
    [
        Input.Any("volts", "V", "volts at the motor's studs"),
        Input.Any("current", "A", "current of the motor"),
        Input.Positive("resistance", "ohm", "resistance of the winding with brushes, stud to stud"),
    ],
    gives: "V",
    formula: "volts - current * resistance",
    source: "Kirchhoff's voltage law; OpenStax College Physics, chapter 23",
    range: "Brushed motors; the brushes take a further 0.5 to 1 V that this leaves in the answer")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] - (given[1] * given[2]);
}
