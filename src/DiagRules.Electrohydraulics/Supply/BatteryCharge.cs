using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

internal sealed class BatteryCharge() : Calculation(
    name: "battery-charge",
    title: "State of charge of a rested 12 V lead-acid block, from its volts with nothing connected.",
    takes:
    [
        Input.Between(0, 13.2, "volts", "V", "volts of one 12 V block, rested for some hours without load or charger"),
        Input.Between(-30, 60, "temperature", "degC", "temperature of the battery", ifLeftOut: 25),
    ],
    gives: "number",
    formula:
        "0 at 11.89 V, 0.25 at 12.06 V, 0.5 at 12.24 V, 0.75 at 12.45 V, 1 at 12.65 V, straight lines between and level beyond; before that, " +
        "volts - 1.5 mV/K * (temperature - 25 degC)",
    source:
        "Table of volts and density of flooded lead-acid batteries in encyclopaedia text; US Army TM 5-3805-262-20 p. 5-142 agrees within " +
        "0.06 V (0.2 V when flat). Volts per kelvin: common practice",
    range:
        "Flooded block of six cells, rested; off by up to 0.1 (0.06 V), by 0.25 near flat. Absorbed-mat blocks stand 0.15 to 0.35 V higher " +
        "and read too full; a block with a dead cell reads flat. Two blocks in series: half their volts")
{
    /// <summary>Six cells at about 0.25 mV/K each; twenty kelvin shift the answer by 0.04.</summary>
    private const double VoltsPerKelvin = 0.0015;

    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        DischargeTable.Charge(DischargeTable.Volts, given[0] - (VoltsPerKelvin * (given[1] - 298.15)));
}
