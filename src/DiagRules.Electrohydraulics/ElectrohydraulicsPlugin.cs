using DiagRules.Electrohydraulics;
using DiagRules.Model.Calculations;

[assembly: CalculationPlugin(ElectrohydraulicsLibrary.Name, "1.0.0", typeof(ElectrohydraulicsPlugin))]

namespace DiagRules.Electrohydraulics;

/// <summary>The library as a plugin, for hosts that take it from a folder rather than in code.</summary>
internal sealed class ElectrohydraulicsPlugin : ICalculationSource
{
    public IEnumerable<ICalculation> Create() => ElectrohydraulicsLibrary.Create().Calculations;
}
