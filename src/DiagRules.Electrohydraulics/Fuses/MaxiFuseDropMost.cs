using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Fuses;

internal sealed class MaxiFuseDropMost() : Calculation(
    name: "maxi-fuse-drop-most",
    title: "The most volts a sound maxi fuse may show across itself.",
    takes:
    [
        Input.Between(20, 80, "rating", "A", "rating printed on the fuse"),
        Input.NotNegative("current", "A", "current through the fuse"),
    ],
    gives: "V",
    formula: "current / rating * 125 mV for 20 A, * 100 mV above",
    source: "DIN 72581-3, form E (drop at rated current)",
    range:
        "Measured on the blades of the fuse, 23 degC; in proportion below the rated current, where a sound fuse stays well under it: cool " +
        "metal has less resistance")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        given[1] > given[0]
            ? Because("the limit holds up to the rated current and more than that flows")
            : given[1] / given[0] * MaxiFuseDrop.AtRatedCurrent(given[0]);
}
