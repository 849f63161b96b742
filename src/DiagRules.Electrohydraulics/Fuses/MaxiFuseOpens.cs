using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Fuses;

internal sealed class MaxiFuseOpens() : Calculation(
    name: "maxi-fuse-opens",
    title: "Time by which a sound maxi fuse must have opened.",
    takes:
    [
        Input.Between(20, 80, "rating", "A", "rating printed on the fuse"),
        Input.NotNegative("current", "A", "current through the fuse"),
    ],
    gives: "s",
    formula: "by current / rating: 135 %: 1800 s; 200 %: 60 s; 350 %: 7 s; between these the time of the next lower current",
    source: "DIN 72581-3, form E",
    range:
        "From 135 % of the rating, at 23 degC; below that it need not open at all. A fuse that holds longer is no fuse of this type and " +
        "rating: look for a bridge")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => FuseWindow.Maxi.Opens(given[1] / given[0]);
}
