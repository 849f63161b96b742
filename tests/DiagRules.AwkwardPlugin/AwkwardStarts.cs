using DiagRules.Model.Calculations;

namespace DiagRules.AwkwardPlugin;

/// <summary>Starts that go wrong. The tests put their names, which are as long as that of <see cref="AwkwardCalculations"/>, in its place.</summary>
public sealed class FailingCalculations : ICalculationSource
{
    /// <inheritdoc/>
    public IEnumerable<ICalculation> Create() => throw new NotSupportedException("Not on this machine.");
}

/// <summary>Never comes to an end.</summary>
public sealed class EndlessCalculations : ICalculationSource
{
    /// <inheritdoc/>
    public IEnumerable<ICalculation> Create()
    {
        Thread.Sleep(Timeout.Infinite);
        return [];
    }
}

/// <summary>Makes nothing.</summary>
public sealed class WithoutCalculations : ICalculationSource
{
    /// <inheritdoc/>
    public IEnumerable<ICalculation> Create() => [];
}

/// <summary>Is no source.</summary>
public sealed class AnotherCalculations;
