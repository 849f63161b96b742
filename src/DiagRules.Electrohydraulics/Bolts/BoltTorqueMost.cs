using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Bolts;

internal sealed class BoltTorqueMost() : Calculation(
    name: "bolt-torque-most",
    title: "Upper end of the tightening torques in use for a bolt: dry.",
    takes:
    [
        Input.Positive("diameter", "mm", "nominal diameter, from 3 mm (M3) to 24 mm (M24)"),
        Input.Any("class", "number", "property class on the head: 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9 or 12.9"),
    ],
    gives: "N.m",
    formula: "bolt-torque(diameter, class, nut-factor: 0.2)",
    source: "T = K d F; F = 75 % of the proof load of ISO 898-1 (proof stresses and stress areas from memory); nut factors of fastener charts",
    range: "As bolt-torque. For a greased bolt this is about a third too much")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        MetricBolt.ProofLoad(given[0], given[1], out var load) is { } reason
            ? Because(reason)
            : 0.2 * given[0] * 0.75 * load;
}
