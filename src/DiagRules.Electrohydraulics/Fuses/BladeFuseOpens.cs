using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Fuses;

internal sealed class BladeFuseOpens() : Calculation(
    name: "blade-fuse-opens",
    title: "Time by which a sound blade fuse (standard or mini) must have opened.",
    takes:
    [
        Input.Between(0.5, 40, "rating", "A", "rating printed on the fuse"),
        Input.NotNegative("current", "A", "current through the fuse"),
    ],
    gives: "s",
    formula: "by current / rating: 135 %: 1800 s; 200 %: 5 s; 350 %: 0.5 s; 600 %: 0.1 s; between these the time of the next lower current",
    source: "ISO 8820-3, types C and F",
    range:
        "From 135 % of the rating, at 23 degC; below that it need not open at all. A fuse that holds longer is no fuse of this type and " +
        "rating: look for a bridge")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => FuseWindow.Blade.Opens(given[1] / given[0]);
}
