using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Bolts;

internal sealed class BoltTorque() : Calculation(
    name: "bolt-torque",
    title: "Tightening torque of a coarse-thread bolt for a known lubrication.",
    takes:
    [
        Input.Positive("diameter", "mm", "nominal diameter, from 3 mm (M3) to 24 mm (M24)"),
        Input.Any("class", "number", "property class on the head: 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9 or 12.9"),
        Input.Between(0.08, 0.4, "nut-factor", "number", "0.2 dry or zinc-plated, 0.17 oiled, 0.15 greased or waxed", ifLeftOut: 0.2),
    ],
    gives: "N.m",
    formula: "nut-factor * diameter * 0.75 * proof stress(class) * stress area(diameter)",
    source: "T = K d F; F = 75 % of the proof load of ISO 898-1 (proof stresses and stress areas from memory); nut factors of fastener charts",
    range:
        "M3 to M24, coarse thread, steel into steel. The clamping force of equal bolts at one torque spreads by 25 to 30 %. The maker's " +
        "figure goes before this")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        MetricBolt.ProofLoad(given[0], given[1], out var load) is { } reason
            ? Because(reason)
            : given[2] * given[0] * 0.75 * load;
}
