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
    range: "As long as the current flows. A plug-in relay bears about 2 W, a crimped terminal less than 1 W (common practice)")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * given[1];
}
