using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

internal sealed class BatteryChargeByDensity() : Calculation(
    name: "battery-charge-by-density",
    title: "State of charge of a flooded lead-acid battery from the density of its electrolyte.",
    takes:
    [
        Input.Between(1, 1.4, "density", "kg/L", "as the hydrometer shows it"),
        Input.Between(-40, 60, "temperature", "degC", "temperature of the electrolyte", ifLeftOut: 25),
    ],
    gives: "number",
    formula:
        "0 at 1.12, 0.25 at 1.155, 0.5 at 1.19, 0.75 at 1.225, 1 at 1.265 kg/L, straight lines between and level beyond; before that, " +
        "electrolyte-density(density, temperature)",
    source: "Table of volts and density of flooded lead-acid batteries in encyclopaedia text; correction as electrolyte-density",
    range: "Not just after charging or topping up; off by up to 0.1. Cells that differ by more than 0.03 kg/L point to a bad cell (common practice)")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        DischargeTable.Charge(DischargeTable.Densities, given[0] + DischargeTable.DensityCorrection(given[1]));
}
