using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Copper;

internal sealed class ResistanceAt20() : Calculation(
    name: "resistance-at-20",
    title: "A measured conductor resistance brought back to 20 degC, to compare with tables.",
    takes:
    [
        Input.NotNegative("resistance", "ohm", "as measured"),
        Input.Between(-60, 200, "temperature", "degC", "temperature of the conductor"),
    ],
    gives: "ohm",
    formula: "resistance * 250 / (230 + temperature / degC)",
    source: "IEC 60228:2004, annex on temperature correction",
    range: "Copper, -60 to 200 degC; within 0.4 % of IEC 60028 between 5 and 100 degC")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * 250 / (230 + given[1] - 273.15);
}
