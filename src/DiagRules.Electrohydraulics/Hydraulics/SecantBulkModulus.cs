using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class SecantBulkModulus() : Calculation(
    name: "secant-bulk-modulus",
    title: "Stiffness of oil from how much it gives way.",
    takes:
    [
        Input.Positive("pressure", "bar", "rise of pressure"),
        Input.Positive("compression", "%", "share of the volume it gave way"),
    ],
    gives: "GPa",
    formula: "pressure / compression",
    source: "Definition of the secant bulk modulus",
    range: "Mineral oil gives way by 0.5 to 0.7 % per 100 bar; much more is air or a swelling hose")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] / given[1];
}
