using DiagRules.Model.Calculations;
using GasSprings;

[assembly: CalculationPlugin("gas-springs", "1.0.0", typeof(GasSpringCalculations))]

namespace GasSprings;

/// <summary>What this plugin offers.</summary>
public sealed class GasSpringCalculations : ICalculationSource
{
    /// <inheritdoc/>
    public IEnumerable<ICalculation> Create() => [new GasSpringForce()];
}
