using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Copper;

internal sealed class VehicleCableResistance() : Calculation(
    name: "vehicle-cable-resistance",
    title: "The most resistance a new road-vehicle cable of this nominal size may have.",
    takes:
    [
        Input.NotNegative("length", "m", "length of copper the current runs through, out and back"),
        Input.Positive("area", "mm2", "nominal size, from 0.5 to 50 mm2"),
        Input.Between(-60, 200, "temperature", "degC", "temperature of the conductor"),
    ],
    gives: "ohm",
    formula: "length * table(area) * (1 + 0.00393 / K * (temperature - 20 degC))",
    source: "ISO 6722-1 (table from memory, 1.5 mm2 confirmed by a published cable calculation); IEC 60028:1925 for the temperature",
    range: "Nominal sizes 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35 and 50 mm2; -60 to 200 degC. A limit: sound cable lies up to 10 % below")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        VehicleCable.MohmPerMetre(given[1], out var mohm) is { } reason
            ? Because(reason)
            : given[0] * mohm / 1000 * AnnealedCopper.Factor(given[2]);
}
