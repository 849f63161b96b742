using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Meters;

internal sealed class DropUncertainty() : Calculation(
    name: "drop-uncertainty",
    title: "How far a difference of two voltage readings can be off (k = 2).",
    takes:
    [
        Input.NotNegative("first-limit", "V", "limit of error of the first reading, from volts-limit"),
        Input.NotNegative("second-limit", "V", "limit of error of the second reading"),
    ],
    gives: "V",
    formula: "2 * sqrt((first-limit^2 + second-limit^2) / 3)",
    source: "JCGM 100:2008, 4.3.7, 5.1.2 and 6.2.1 (limits taken as rectangular)",
    range: "Errors independent of each other, which is on the safe side for one meter on one range; measure a drop directly and it is far smaller")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        2 * Math.Sqrt(((given[0] * given[0]) + (given[1] * given[1])) / 3);
}
