using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Copper;

internal sealed class CableDropByData() : Calculation(
    name: "cable-drop-by-data",
    title: "Volts lost along a cable whose data sheet gives the resistance per length.",
    takes:
    [
        Input.Any("current", "A", "current in the cable"),
        Input.NotNegative("length", "m", "length of copper the current runs through, out and back"),
        Input.NotNegative("resistance-per-length", "mohm/m", "resistance per length at 20 degC"),
        Input.Between(-60, 200, "temperature", "degC", "temperature of the conductor", ifLeftOut: 20),
    ],
    gives: "V",
    formula: "current * length * resistance-per-length * (1 + 0.00393 / K * (temperature - 20 degC))",
    source: "Ohm's law; worked tables 11-7 and 11-8 of FAA AC 43.13-1B; IEC 60028:1925 for the temperature",
    range: "Copper, -60 to 200 degC, direct current")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        given[0] * given[1] * given[2] * AnnealedCopper.Factor(given[3]);
}
