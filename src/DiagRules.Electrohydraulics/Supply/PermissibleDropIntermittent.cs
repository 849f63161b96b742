using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

internal sealed class PermissibleDropIntermittent() : Calculation(
    name: "permissible-drop-intermittent",
    title: "Volts a feed that works for short times (pump, lift) may lose from source to load.",
    takes:
    [
        Input.Positive("nominal", "V", "volts of the system: 12 or 14, 24 or 28"),
    ],
    gives: "V",
    formula: "by nominal: 1 V in a 12 V (14 V) system, 2 V in a 24 V (28 V) system",
    source: "FAA AC 43.13-1B, table 11-6 (from memory)",
    range:
        "Systems of 12 to 14.5 V and of 24 to 29 V; on for two minutes at most. A practice of aircraft wiring that workshops share; the " +
        "maker's limit goes before it")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => SupplySystem.Drop(given[0], 1);
}
