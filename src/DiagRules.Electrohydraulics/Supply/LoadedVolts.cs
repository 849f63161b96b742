using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Supply;

internal sealed class LoadedVolts() : Calculation(
    name: "loaded-volts",
    title: "Volts that are left at the load when its current sags the feed.",
    takes:
    [
        Input.Any("rest-volts", "V", "volts without load"),
        Input.NotNegative("resistance", "ohm", "resistance of battery and feed together"),
        Input.Any("current", "A", "current of the load"),
    ],
    gives: "V",
    formula: "rest-volts - resistance * current",
    source: "Ohm's law; OpenStax College Physics 21.2",
    range: "The first seconds; a battery under a lasting load sags further")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] - (given[1] * given[2]);
}
