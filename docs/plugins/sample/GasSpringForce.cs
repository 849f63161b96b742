using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;

namespace GasSprings;

/// <summary>How hard a gas spring pushes at another temperature: a flap that drops on a frosty morning may have sound springs.</summary>
internal sealed class GasSpringForce : ICalculation
{
    /// <inheritdoc/>
    public CalculationDescription Description { get; } = new(
        Name: "gas-spring-force",
        Title: "Force of a gas spring at another temperature than the one its force is stated for.",
        Parameters:
        [
            new("force", UnitTable.Get("N"), "force printed on the spring"),
            new("temperature", UnitTable.Get("degC"), "temperature of the spring"),
            new("stated-at", UnitTable.Get("degC"), "temperature the printed force is meant for", UnitTable.Get("degC").ToSi(20)),
        ],
        Result: UnitTable.Get("N"),
        Formula: "force * (temperature / K) / (stated-at / K)",
        Source: "Pressure law of ideal gases: at constant volume pressure goes with the absolute temperature",
        ValidRange: "Nitrogen springs, -30 to 80 degC; within 2 %. Friction of the seals comes on top and grows in the cold");

    /// <inheritdoc/>
    public CalculationResult Compute(ReadOnlySpan<double> arguments)
    {
        var (force, temperature, statedAt) = (arguments[0], arguments[1], arguments[2]);    // in SI: newtons and kelvins
        if (force < 0)
        {
            return CalculationResult.Because("'force' is negative");
        }

        return temperature <= 0 || statedAt <= 0
            ? CalculationResult.Because("a temperature lies at or below absolute zero")
            : force * temperature / statedAt;
    }
}
