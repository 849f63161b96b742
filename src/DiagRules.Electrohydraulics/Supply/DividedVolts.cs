using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

internal sealed class DividedVolts() : Calculation(
    name: "divided-volts",
    title: "Volts at a load behind a feed with resistance.",
    takes:
    [
        Input.Any("supply", "V", "volts of the source without load"),
        Input.NotNegative("feed-resistance", "ohm", "resistance of battery and feed together"),
        Input.Positive("load-resistance", "ohm", "resistance of the load"),
    ],
    gives: "V",
    formula: "supply * load-resistance / (feed-resistance + load-resistance)",
    source: "Ohm's law; OpenStax College Physics 21.2",
    range: "Loads without back emf: coils, lamps that burn, motors that stand still")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] / (given[1] + given[2]) * given[2];
}
