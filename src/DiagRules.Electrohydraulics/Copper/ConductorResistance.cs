using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Copper;

internal sealed class ConductorResistance() : Calculation(
    name: "conductor-resistance",
    title: "Resistance of a copper conductor of this metal area.",
    takes:
    [
        Input.NotNegative("length", "m", "length of copper the current runs through, out and back"),
        Input.Positive("area", "mm2", "cross-section of the copper"),
        Input.Between(-60, 200, "temperature", "degC", "temperature of the conductor"),
    ],
    gives: "ohm",
    formula: "0.017241 ohm mm2/m * length / area * (1 + 0.00393 / K * (temperature - 20 degC))",
    source: "IEC 60028:1925 (annealed copper)",
    range: "-60 to 200 degC. Plain stranded cable of the same nominal area lies up to 15 % above: see conductor-resistance-most and vehicle-cable-resistance")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        AnnealedCopper.Resistivity * given[0] / given[1] * AnnealedCopper.Factor(given[2]);
}
