using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Motors;

internal sealed class LockedRotorCurrent() : Calculation(
    name: "locked-rotor-current",
    title: "Current of a direct-current motor that is switched on and does not turn.",
    takes:
    [
        Input.Any("supply", "V", "volts at the motor's studs at that moment"),
        Input.Positive("resistance", "ohm", "resistance of the winding with brushes, stud to stud"),
    ],
    gives: "A",
    formula: "supply / resistance",
    source: "Ohm's law: a rotor that stands still makes no back emf (OpenStax College Physics, chapter 23)",
    range:
        "Brushed motors with permanent magnets, or in series with the field resistance counted in. Brushes change the resistance by some 10 % " +
        "from place to place")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] / given[1];
}
