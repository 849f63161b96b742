using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Fuses;

internal sealed class MaxiFuseCurrentLeast() : Calculation(
    name: "maxi-fuse-current-least",
    title: "Current that flows at least, from the drop across a sound maxi fuse.",
    takes:
    [
        Input.NotNegative("drop", "V", "volts across the fuse, blade to blade"),
        Input.Between(20, 80, "rating", "A", "rating printed on the fuse"),
    ],
    gives: "A",
    formula: "drop / 125 mV * rating for 20 A, drop / 100 mV * rating above",
    source: "DIN 72581-3, form E (drop at rated current)",
    range: "A lower bound: a real fuse has less resistance than the limit, so more current flows than this")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] / MaxiFuseDrop.AtRatedCurrent(given[1]) * given[1];
}
