using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

internal sealed class BatteryVoltsByDensity() : Calculation(
    name: "battery-volts-by-density",
    title: "Volts at rest that a 12 V block should show for the density of its electrolyte.",
    takes:
    [
        Input.Between(1, 1.4, "density", "kg/L", "brought to 25 degC"),
    ],
    gives: "V",
    formula: "6 * (density / (1 kg/L) + 0.845) V",
    source: "Rule of thumb of battery handbooks (from memory; within 0.1 V of the table behind battery-charge)",
    range: "Flooded block of six cells, rested; within 0.1 V. Much less means that a cell is dead")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => 6 * ((given[0] / 1000) + 0.845);
}
