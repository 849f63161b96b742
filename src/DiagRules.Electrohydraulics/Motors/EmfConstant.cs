using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Motors;

internal sealed class EmfConstant() : Calculation(
    name: "emf-constant",
    title: "Back emf per speed, from one known running point of a permanent-magnet motor.",
    takes:
    [
        Input.Any("volts", "V", "volts at the motor's studs"),
        Input.Any("current", "A", "current at that point"),
        Input.Positive("resistance", "ohm", "resistance of the winding with brushes, stud to stud"),
        Input.Positive("speed", "rpm", "speed at that point"),
    ],
    gives: "V/rpm",
    formula: "(volts - current * resistance) / speed",
    source: "Law of induction at constant field; in V.s/rad it equals the torque constant in N.m/A",
    range: "Permanent-magnet motors. Falls by 0.2 % per kelvin with ferrite magnets (common practice)")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => (given[0] - (given[1] * given[2])) / given[3];
}
