using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

internal sealed class ElectrolyteDensity() : Calculation(
    name: "electrolyte-density",
    title: "Hydrometer reading brought to 80 degF (26.7 degC), to compare with tables.",
    takes:
    [
        Input.Between(1, 1.4, "density", "kg/L", "as the hydrometer shows it"),
        Input.Between(-40, 60, "temperature", "degC", "temperature of the electrolyte"),
    ],
    gives: "kg/L",
    formula: "density + 0.004 kg/L / 10 degF * (temperature - 80 degF)",
    source: "Correction of 0.004 per 10 degF from 80 degF as battery service pages print it",
    range: "Sulphuric acid of lead-acid batteries; hydrometers read to 0.005 kg/L")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] + DischargeTable.DensityCorrection(given[1]);
}
