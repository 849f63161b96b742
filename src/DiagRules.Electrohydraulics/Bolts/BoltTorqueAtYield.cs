using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Bolts;

internal sealed class BoltTorqueAtYield() : Calculation(
    name: "bolt-torque-at-yield",
    title: "Torque that strains a coarse-thread bolt to 90 % of its yield, by coefficient of friction.",
    takes:
    [
        Input.Positive("diameter", "mm", "nominal diameter, from 3 mm (M3) to 24 mm (M24)"),
        Input.Any("class", "number", "property class on the head: 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9 or 12.9"),
        Input.Between(0.04, 0.4, "friction", "number", "coefficient of friction of thread and head: 0.08 to 0.16"),
    ],
    gives: "N.m",
    formula:
        "F * (0.16 P + 0.58 d2 * friction + 0.625 * diameter * friction), F = 0.9 Rp A0 / sqrt(1 + 3 * (1.5 * d2 / d0 * (P / (pi * d2) + " +
        "1.155 * friction))^2); P, d2, d0, A0 of the thread, Rp yield stress of the class",
    source:
        "VDI 2230 part 1 (formula from memory, its table for M5 to M8 8.8 within 5 %); ISO 724 thread dimensions; head taken as 1.25 " +
        "diameters between friction circles",
    range: "M3 to M24, coarse thread, hexagon heads. An upper limit: 90 % of yield, the twist of tightening counted in")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given)
    {
        if (MetricBolt.Find(given[0], given[1], out var bolt) is { } reason)
        {
            return Because(reason);
        }

        var (pitch, friction) = (bolt.Pitch, given[2]);
        var twist = 1.5 * bolt.PitchDiameter / bolt.StressDiameter * ((pitch / (Math.PI * bolt.PitchDiameter)) + (1.155 * friction));
        var force = 0.9 * bolt.Yield * bolt.StressArea / Math.Sqrt(1 + (3 * twist * twist));
        return force * ((0.16 * pitch) + (0.58 * bolt.PitchDiameter * friction) + (0.625 * given[0] * friction));
    }
}
