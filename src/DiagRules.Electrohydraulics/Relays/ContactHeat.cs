using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Relays;

internal sealed class ContactHeat() : Calculation(
    name: "contact-heat",
    title: "Heat a closed contact or joint makes.",
    takes:
    [
        Input.Any("drop", "V", "volts across it while the current flows"),
        Input.Any("current", "A", "current through it"),
    ],
    gives: "W",
    formula: "drop * current",
    source: "Joule's law",
    range: "As long as the current flows. Data sheets of plug-in relays allow 50 to 200 mV at 10 A, which is 0.5 to 2 W")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * given[1];
}
