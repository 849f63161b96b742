using DiagRules.AwkwardPlugin;
using DiagRules.Model.Calculations;

[assembly: CalculationPlugin("awkward", "1.0.0", typeof(AwkwardCalculations))]

namespace DiagRules.AwkwardPlugin;

/// <summary>A plugin that does all a plugin must not do.</summary>
public sealed class AwkwardCalculations : ICalculationSource
{
    /// <inheritdoc/>
    public IEnumerable<ICalculation> Create() =>
    [
        new Awkward("throwing", _ => throw new InvalidOperationException("The table has no such row.\nSecond line.")),
        new Awkward("never-ending", _ =>
        {
            Thread.Sleep(Timeout.Infinite);
            return 0;
        }),
        new Awkward("not-a-number", _ => double.NaN),
        new Awkward("infinite", volts => volts / 0),
        new Awkward("wrong-sign", volts => -volts),
        new Awkward("doubling", volts => 2 * volts),
    ];
}
