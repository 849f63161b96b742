using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

internal sealed class SeriesResistance() : Calculation(
    name: "series-resistance",
    title: "Resistance that must lie in a circuit besides its load, from the current that runs.",
    takes:
    [
        Input.NotNegative("supply", "V", "volts of the source without load"),
        Input.NotNegative("load-resistance", "ohm", "resistance of the load"),
        Input.Positive("current", "A", "current that runs"),
    ],
    gives: "ohm",
    formula: "supply / current - load-resistance",
    source: "Ohm's law",
    range: "Loads without back emf. Small differences of large numbers are rough: the meter errors of both add up")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given)
    {
        var series = (given[0] / given[2]) - given[1];
        return series < 0
            ? Because("more current runs than the load alone would take: one of the readings is off, or part of the load is shorted")
            : series;
    }
}
