using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

internal sealed class PermissibleDrop() : Calculation(
    name: "permissible-drop",
    title: "Volts a feed that works continuously may lose from source to load.",
    takes:
    [
        Input.Positive("nominal", "V", "volts of the system: 12 or 14, 24 or 28"),
    ],
    gives: "V",
    formula: "by nominal: 0.5 V in a 12 V (14 V) system, 1 V in a 24 V (28 V) system",
    source: "FAA AC 43.13-1B, table 11-6 (from memory; the limits return in tables 11-7 and 11-8)",
    range: "Systems of 12 to 14.5 V and of 24 to 29 V. A practice of aircraft wiring that workshops share; the maker's limit goes before it")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => SupplySystem.Drop(given[0], 0.5);
}
