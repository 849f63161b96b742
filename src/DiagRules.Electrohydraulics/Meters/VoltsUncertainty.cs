using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Meters;

internal sealed class VoltsUncertainty() : Calculation(
    name: "volts-uncertainty",
    title: "Standard uncertainty of a mean of voltage readings.",
    takes:
    [
        Input.NotNegative("scatter", "V", "standard deviation of the mean of repeated readings, 0 for one steady reading"),
        Input.NotNegative("limit", "V", "limit of error of the meter, from volts-limit"),
    ],
    gives: "V",
    formula: "sqrt(scatter^2 + limit^2 / 3)",
    source: "JCGM 100:2008, 4.3.7 and 5.1.2 (limits taken as rectangular)",
    range: "Scatter and limit independent of each other; twice this covers about 95 %")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => Math.Sqrt((given[0] * given[0]) + (given[1] * given[1] / 3));
}
