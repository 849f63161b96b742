using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class Viscosity() : Calculation(
    name: "viscosity",
    title: "Kinematic viscosity of an oil at a temperature, from its values at 40 and 100 degC.",
    takes:
    [
        Input.Between(-50, 150, "temperature", "degC", "temperature of the oil"),
        Input.Between(2, 5000, "viscosity-40", "mm2/s", "at 40 degC, from the data sheet"),
        Input.Between(2, 500, "viscosity-100", "mm2/s", "at 100 degC, from the data sheet"),
    ],
    gives: "mm2/s",
    formula:
        "lg lg (result / (mm2/s) + 0.7) = A - B * lg (temperature / K), with A and B such that it gives viscosity-40 at 40 degC and " +
        "viscosity-100 at 100 degC",
    source: "ASTM D341",
    range: "2 to 20 million mm2/s; close between the two points and beyond for a few tens of kelvin. Cold oil near its pour point is stiffer than this says")
{
    private const double SquareMillimetres = 1e6;

    private static double DoubleLog(double viscosity) => Math.Log10(Math.Log10((viscosity * SquareMillimetres) + 0.7));

    protected override CalculationResult Solve(ReadOnlySpan<double> given)
    {
        var (thick, thin) = (DoubleLog(given[1]), DoubleLog(given[2]));
        if (thin >= thick)
        {
            return Because("the viscosity at 100 degC must be below that at 40 degC");
        }

        var slope = (thick - thin) / Math.Log10(373.15 / 313.15);
        var viscosity = (Math.Pow(10, Math.Pow(10, thick - (slope * Math.Log10(given[0] / 313.15)))) - 0.7) / SquareMillimetres;
        return viscosity is >= 2 / SquareMillimetres and <= 2e7 / SquareMillimetres
            ? viscosity
            : Because("it would lie outside 2 to 20 million mm2/s, where the formula holds");
    }
}
