using DiagRules.Electrohydraulics.Copper;
using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Motors;

internal sealed class WindingResistance() : Calculation(
    name: "winding-resistance",
    title: "Resistance of a copper winding at another temperature.",
    takes:
    [
        Input.NotNegative("resistance", "ohm", "resistance as measured or from the data sheet"),
        Input.Between(-60, 250, "temperature", "degC", "temperature wanted"),
        Input.Between(-60, 250, "measured-at", "degC", "temperature at which it was measured", ifLeftOut: 20),
    ],
    gives: "ohm",
    formula: "resistance * (234.5 + temperature / degC) / (234.5 + measured-at / degC)",
    source: "Copper has no resistance at -234.5 degC in extrapolation (FAA AC 43.13-1B; winding temperature-rise notes)",
    range: "Copper windings, -60 to 250 degC. Carbon brushes do not follow it")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * AnnealedCopper.Factor(given[2], given[1]);
}
