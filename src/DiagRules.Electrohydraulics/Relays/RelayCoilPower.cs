using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Relays;

internal sealed class RelayCoilPower() : Calculation(
    name: "relay-coil-power",
    title: "Heat a relay or contactor coil makes.",
    takes:
    [
        Input.Any("volts", "V", "volts across the coil"),
        Input.Positive("resistance", "ohm", "resistance of the coil at its temperature"),
    ],
    gives: "W",
    formula: "volts^2 / resistance",
    source: "Joule's law",
    range: "Coils for direct current without electronics; data sheets allow 10 % on the resistance")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * given[0] / given[1];
}
