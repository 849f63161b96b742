using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Relays;

internal sealed class ParallelResistance() : Calculation(
    name: "parallel-resistance",
    title: "Resistance of two parts side by side, as a coil and its suppressor resistor.",
    takes:
    [
        Input.Positive("first", "ohm", "one part"),
        Input.Positive("second", "ohm", "the other part"),
    ],
    gives: "ohm",
    formula: "1 / (1 / first + 1 / second)",
    source: "Kirchhoff's current law",
    range: "Resistors and coils at rest. A suppressor diode counts only when measured the wrong way round")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => 1 / ((1 / given[0]) + (1 / given[1]));
}
