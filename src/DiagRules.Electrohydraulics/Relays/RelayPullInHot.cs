using DiagRules.Electrohydraulics.Copper;
using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Relays;

internal sealed class RelayPullInHot() : Calculation(
    name: "relay-pull-in-hot",
    title: "Volts a relay needs to pull in when its coil is hot.",
    takes:
    [
        Input.NotNegative("pull-in", "V", "pull-in volts from the data sheet"),
        Input.Between(-60, 200, "temperature", "degC", "temperature of the coil"),
        Input.Between(-60, 200, "rated-at", "degC", "temperature the data sheet means", ifLeftOut: 23),
    ],
    gives: "V",
    formula: "pull-in * (234.5 + temperature / degC) / (234.5 + rated-at / degC)",
    source: "The pull of a coil goes with its current, and copper has no resistance at -234.5 degC in extrapolation",
    range: "Copper coils for direct current. A coil that has been on is 20 to 60 K warmer than the air round it")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] * AnnealedCopper.Factor(given[2], given[1]);
}
