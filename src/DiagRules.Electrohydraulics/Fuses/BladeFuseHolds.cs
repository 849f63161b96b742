using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Fuses;

internal sealed class BladeFuseHolds() : Calculation(
    name: "blade-fuse-holds",
    title: "Time a sound blade fuse (standard or mini) must stand a current at least.",
    takes:
    [
        Input.Between(0.5, 40, "rating", "A", "rating printed on the fuse"),
        Input.NotNegative("current", "A", "current through the fuse"),
    ],
    gives: "s",
    formula:
        "by current / rating: 110 %: 360000 s; 135 %: 0.75 s; 200 %: 0.15 s; 350 %: 0.08 s; 600 %: 0.03 s; between these the time of the next " +
        "higher current",
    source: "ISO 8820-3, types C and F; the shortest times at 200 % and above from memory",
    range: "Up to 600 % of the rating, at 23 degC; 360000 s (100 h) stands for ever. A fuse that opened sooner was weak, hot or hit by more current")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => FuseWindow.Blade.Holds(given[1] / given[0]);
}
