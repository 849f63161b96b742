using DiagRules.Model.Quantities;

namespace DiagRules.Cli.Rendering;

/// <summary>The unit that calculations compute in.</summary>
internal static class CoherentUnit
{
    /// <summary>The coherent SI unit for values of a unit; kelvin for temperatures.</summary>
    public static Unit Of(Unit unit) => UnitTable.Get(unit.Dimension.SiSymbol);
}
