namespace DiagRules.Model.Calculations;

/// <summary>Makes the calculations of a plugin. The class needs a constructor without parameters; <see cref="CalculationPluginAttribute"/> names it.</summary>
/// <remarks>It runs once, when the plugin is loaded. If it throws, or runs too long, the plugin is not used and a problem says why.</remarks>
public interface ICalculationSource
{
    /// <summary>The calculations, in any order.</summary>
    IEnumerable<ICalculation> Create();
}
