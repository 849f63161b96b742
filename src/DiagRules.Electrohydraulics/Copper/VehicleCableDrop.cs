using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Copper;

internal sealed class VehicleCableDrop() : Calculation(
    name: "vehicle-cable-drop",
    title: "The most volts a sound road-vehicle cable of this nominal size may lose.",
    takes:
    [
        Input.Any("current", "A", "current in the cable"),
        Input.NotNegative("length", "m", "length of copper the current runs through, out and back"),
        Input.Positive("area", "mm2", "nominal size, from 0.5 to 50 mm2"),
        Input.Between(-60, 200, "temperature", "degC", "temperature of the conductor"),
    ],
    gives: "V",
    formula: "current * vehicle-cable-resistance(length, area, temperature)",
    source: "Ohm's law; ISO 6722-1 (table from memory, see vehicle-cable-resistance); IEC 60028:1925",
    range: "As vehicle-cable-resistance; direct current. The cable alone: joints, fuses and switches come on top")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        VehicleCable.MohmPerMetre(given[2], out var mohm) is { } reason
            ? Because(reason)
            : given[0] * given[1] * mohm / 1000 * AnnealedCopper.Factor(given[3]);
}
