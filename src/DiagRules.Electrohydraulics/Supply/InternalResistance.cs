using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

internal sealed class InternalResistance() : Calculation(
    name: "internal-resistance",
    title: "Resistance inside a battery, or of a whole feed, from volts at rest and under load.",
    takes:
    [
        Input.Any("rest-volts", "V", "volts without load"),
        Input.Any("load-volts", "V", "volts at the same place under load"),
        Input.Positive("current", "A", "current of the load"),
    ],
    gives: "ohm",
    formula: "(rest-volts - load-volts) / current",
    source: "Ohm's law; OpenStax College Physics 21.2 (electromotive force and terminal voltage)",
    range: "Volts read within seconds of each other. The smaller the drop, the more the meter's error counts: below 0.2 V the answer is rough")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        given[1] > given[0]
            ? Because("there are more volts under load than at rest: a charger is at work, or the two readings are swapped")
            : (given[0] - given[1]) / given[2];
}
