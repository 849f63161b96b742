using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Motors;

internal sealed class InsulationLeast() : Calculation(
    name: "insulation-least",
    title: "Least insulation resistance of a winding at 40 degC by the old rule.",
    takes:
    [
        Input.Between(0, 1000, "rated-volts", "V", "rated volts of the machine"),
    ],
    gives: "Mohm",
    formula: "1 Mohm + 1 Mohm/kV * rated-volts",
    source: "IEEE 43, editions before 2013 (kV + 1)",
    range: "Small and old machines; IEEE 43-2013 asks 5 Mohm for armatures. Never test a motor with electronics or suppressors in place")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => 1e6 + (1000 * given[0]);
}
