using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Relays;

internal sealed class ContactResistance() : Calculation(
    name: "contact-resistance",
    title: "Resistance of a closed contact, joint or load from its drop.",
    takes:
    [
        Input.Any("drop", "V", "volts across it while the current flows"),
        Input.Positive("current", "A", "current through it"),
    ],
    gives: "ohm",
    formula: "drop / current",
    source: "Ohm's law",
    range: "Measured on the terminals themselves. Below 10 mV the meter decides more than the contact")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] / given[1];
}
