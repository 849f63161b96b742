using DiagRules.Electrohydraulics.Copper;
using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Motors;

internal sealed class WindingTemperature() : Calculation(
    name: "winding-temperature",
    title: "Mean temperature of a copper winding from its resistance cold and hot.",
    takes:
    [
        Input.Positive("cold-resistance", "ohm", "resistance when cold"),
        Input.Positive("hot-resistance", "ohm", "resistance when hot"),
        Input.Between(-60, 250, "cold-temperature", "degC", "temperature when cold", ifLeftOut: 20),
    ],
    gives: "degC",
    formula: "hot-resistance / cold-resistance * (234.5 + cold-temperature / degC) - 234.5, in degC",
    source: "Copper has no resistance at -234.5 degC in extrapolation (winding temperature-rise notes)",
    range: "Copper windings. A mean: the hottest spot is 5 to 15 K above. 1 % of error in the ratio is 2.5 K")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given)
    {
        var temperature = AnnealedCopper.Temperature(given[2], given[1] / given[0]);
        return temperature is >= 213.15 and <= 573.15
            ? temperature
            : Because("the two resistances would put the winding outside -60 degC to 300 degC: turns are shorted or open, or one reading is off");
    }
}
