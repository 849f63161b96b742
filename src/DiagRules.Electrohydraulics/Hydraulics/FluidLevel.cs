using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class FluidLevel() : Calculation(
    name: "fluid-level",
    title: "Where the level stands between its marks once the oil is at the temperature the marks are for.",
    takes:
    [
        Input.NotNegative("level", "mm", "height of the oil above the bottom of the tank"),
        Input.NotNegative("low-mark", "mm", "height of the lower mark"),
        Input.NotNegative("high-mark", "mm", "height of the upper mark"),
        Input.Between(-40, 120, "temperature", "degC", "temperature of the oil"),
        Input.Between(-40, 120, "marks-at", "degC", "temperature the marks are for", ifLeftOut: 20),
    ],
    gives: "%",
    formula: "(level * (1 - 0.0007 / K * (temperature - marks-at)) - low-mark) / (high-mark - low-mark)",
    source: "Mineral oil swells by 0.07 % per kelvin (handbook value; common practice)",
    range: "Upright tank walls, cylinders retracted. 0 % is the lower mark, 100 % the upper; below 0 % there is too little, above 100 % too much")
{
    private const double SwellingPerKelvin = 0.0007;

    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        given[2] > given[1]
            ? ((given[0] * (1 - (SwellingPerKelvin * (given[3] - given[4])))) - given[1]) / (given[2] - given[1])
            : Because("the upper mark must be above the lower one");
}
