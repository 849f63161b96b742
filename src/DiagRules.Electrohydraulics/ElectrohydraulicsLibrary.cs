using DiagRules.Electrohydraulics.Copper;
using DiagRules.Electrohydraulics.Hydraulics;
using DiagRules.Electrohydraulics.Motors;
using DiagRules.Electrohydraulics.Supply;
using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics;

/// <summary>The calculations for electro-hydraulic mechanisms on vehicles, as a library that packs ask for by name.</summary>
/// <remarks>
/// <para>A pack declares it with <c>calculations: [electrohydraulics@1.x]</c>. Each calculation states its formula, source and
/// range in its <see cref="CalculationDescription"/>.</para>
/// <para>Every calculation is total: for values outside its range it gives a reason, never NaN, infinity or an exception.</para>
/// </remarks>
public static class ElectrohydraulicsLibrary
{
    /// <summary>The name packs ask for.</summary>
    public const string Name = "electrohydraulics";

    /// <summary>Makes the library; the result is immutable and may be shared between threads.</summary>
    public static CalculationLibrary Create() => new(Name, new Version(1, 0, 0),
    [
        new ConductorResistance(), new CableDrop(),
        new BatteryCharge(), new InternalResistance(),
        new LockedRotorCurrent(),
        new CylinderForce(), new CylinderTime(),
    ]);
}
