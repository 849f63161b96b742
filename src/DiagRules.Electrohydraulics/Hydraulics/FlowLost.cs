using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class FlowLost() : Calculation(
    name: "flow-lost",
    title: "Share of the flow that goes another way than to the cylinder, from how long a stroke takes.",
    takes:
    [
        Input.Positive("expected-time", "s", "time when all is well, from cylinder-time or the data sheet"),
        Input.Positive("time", "s", "time it took"),
    ],
    gives: "%",
    formula: "1 - expected-time / time; 0 when it was faster",
    source: "The same volume in more time is less flow",
    range: "Same pump speed as expected: see motor-speed; a slow motor looks like a leak. Timing by hand is good to 0.3 s")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => Math.Max(0, 1 - (given[0] / given[1]));
}
