using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class LeakRate() : Calculation(
    name: "leak-rate",
    title: "Leak as a flow, from counting drops.",
    takes:
    [
        Input.NotNegative("drops", "number", "drops counted"),
        Input.Positive("time", "min", "time they were counted for"),
        Input.Positive("drop-volume", "mL", "volume of one drop", ifLeftOut: 0.05),
    ],
    gives: "mL/min",
    formula: "drops * drop-volume / time",
    source: "20 drops/mL is the metric convention; published leak costs imply 0.033 to 0.051 mL a drop",
    range: "Within a third: drops of thin or hot oil are smaller")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * given[2] / given[1];
}
