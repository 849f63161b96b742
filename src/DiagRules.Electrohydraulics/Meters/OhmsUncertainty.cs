using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Meters;

internal sealed class OhmsUncertainty() : Calculation(
    name: "ohms-uncertainty",
    title: "How far a resistance from volts and amperes can be off (k = 2).",
    takes:
    [
        Input.Any("volts", "V", "volts across it"),
        Input.NotNegative("volts-limit", "V", "limit of error of the volts"),
        Input.Positive("current", "A", "current through it"),
        Input.NotNegative("current-limit", "A", "limit of error of the current"),
    ],
    gives: "ohm",
    formula: "2 * sqrt((volts-limit / current)^2 + (volts * current-limit / current^2)^2) / sqrt(3)",
    source: "JCGM 100:2008, 4.3.7, 5.1.2 and 6.2.1 (limits taken as rectangular)",
    range: "Errors independent of each other and small against the readings (first order)")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given)
    {
        var (volts, voltsLimit, current, currentLimit) = (given[0], given[1], given[2], given[3]);
        var byVolts = voltsLimit / current;
        var byCurrent = volts / current * (currentLimit / current);
        return 2 * Math.Sqrt(((byVolts * byVolts) + (byCurrent * byCurrent)) / 3);
    }
}
