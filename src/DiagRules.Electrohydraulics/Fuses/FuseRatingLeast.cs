using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Fuses;

internal sealed class FuseRatingLeast() : Calculation(
    name: "fuse-rating-least",
    title: "Least rating for a load that is always on.",
    takes:
    [
        Input.NotNegative("current", "A", "current of the load"),
    ],
    gives: "A",
    formula: "current / 0.75",
    source: "Fuse selection notes of the trade: 75 % of the rating at 25 degC for continuous load",
    range: "Take the next size above, never more than the cable stands; pumps that start hard need a slow type")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] / 0.75;
}
