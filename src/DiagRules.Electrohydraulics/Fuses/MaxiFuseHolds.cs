using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Fuses;

internal sealed class MaxiFuseHolds() : Calculation(
    name: "maxi-fuse-holds",
    title: "Time a sound maxi fuse must stand a current at least.",
    takes:
    [
        Input.Between(20, 80, "rating", "A", "rating printed on the fuse"),
        Input.NotNegative("current", "A", "current through the fuse"),
    ],
    gives: "s",
    formula: "by current / rating: 100 %: 360000 s; 135 %: 60 s; 200 %: 2 s; 350 %: 0.2 s; between these the time of the next higher current",
    source: "DIN 72581-3, form E",
    range: "Up to 350 % of the rating, at 23 degC; 360000 s (100 h) stands for ever. A fuse that opened sooner was weak, hot or hit by more current")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => FuseWindow.Maxi.Holds(given[1] / given[0]);
}
