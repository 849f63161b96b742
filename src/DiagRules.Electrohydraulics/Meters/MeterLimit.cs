using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Meters;

/// <summary>One class for all quantities a multimeter shows; a calculation has one dimension, so the library holds one for each.</summary>
internal sealed class MeterLimit(string quantity, string unit) : Calculation(
    name: $"{quantity}-limit",
    title: $"How far {quantity} can be off on a meter with this accuracy statement, either way.",
    takes:
    [
        Input.Any("reading", unit, "what the meter shows"),
        Input.Between(0, 100, "percent", "%", "percentage of the reading, from the data sheet"),
        Input.NotNegative("digits", "number", "digits, from the data sheet"),
        Input.NotNegative("resolution", unit, "one step of the last digit on that range"),
    ],
    gives: unit,
    formula: "percent * abs(reading) + digits * resolution",
    source: "Accuracy statements of multimeter data sheets: plus or minus (percent of reading + digits)",
    range: "23 degC give or take 5 K, within a year of calibration. A limit; its standard uncertainty is limit / sqrt(3)")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        (given[1] * Math.Abs(given[0])) + (given[2] * given[3]);
}
