using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Motors;

internal sealed class InsulationAt40() : Calculation(
    name: "insulation-at-40",
    title: "Insulation resistance brought to 40 degC, to compare with minimum values.",
    takes:
    [
        Input.NotNegative("resistance", "Mohm", "insulation resistance as measured"),
        Input.Between(-10, 80, "temperature", "degC", "temperature of the winding"),
    ],
    gives: "Mohm",
    formula: "resistance * 2^((temperature - 40 degC) / (10 K))",
    source: "IEEE 43: insulation resistance halves for every 10 K",
    range: "Above the dew point. The rule is rough: graphs for single materials differ by 15 % at 30 K")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * Math.Pow(2, (given[1] - 313.15) / 10);
}
