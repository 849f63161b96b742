using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;

namespace DiagRules.AwkwardPlugin;

/// <summary>A calculation of volts from volts.</summary>
internal sealed class Awkward(string name, Func<double, double> function) : ICalculation
{
    public CalculationDescription Description { get; } = new(
        name,
        "Something about volts.",
        [new CalculationParameter("volts", UnitTable.Get("V"), "volts of something")],
        UnitTable.Get("V"),
        "volts",
        "made up for a test",
        "everywhere");

    public CalculationResult Compute(ReadOnlySpan<double> arguments) => function(arguments[0]);
}
