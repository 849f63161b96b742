using DiagRules.Electrohydraulics.Copper;
using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Relays;

internal sealed class RelayCoilCurrent() : Calculation(
    name: "relay-coil-current",
    title: "Current of a relay or contactor coil.",
    takes:
    [
        Input.Any("volts", "V", "volts across the coil"),
        Input.Positive("resistance", "ohm", "resistance of the coil at 20 degC"),
        Input.Between(-60, 200, "temperature", "degC", "temperature of the coil", ifLeftOut: 20),
    ],
    gives: "A",
    formula: "volts / (resistance * (1 + 0.00393 / K * (temperature - 20 degC)))",
    source: "Ohm's law; IEC 60028:1925",
    range: "Coils for direct current without electronics; data sheets allow 10 % on the resistance")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] / (given[1] * AnnealedCopper.Factor(given[2]));
}
