using DiagRules.Electrohydraulics.Bolts;
using DiagRules.Electrohydraulics.Copper;
using DiagRules.Electrohydraulics.Fuses;
using DiagRules.Electrohydraulics.Hydraulics;
using DiagRules.Electrohydraulics.Meters;
using DiagRules.Electrohydraulics.Motors;
using DiagRules.Electrohydraulics.Relays;
using DiagRules.Electrohydraulics.Supply;
using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics;

/// <summary>The calculations for electro-hydraulic mechanisms on vehicles, as a library that packs ask for by name.</summary>
/// <remarks>
/// <para>A pack declares it with <c>calculations: [electrohydraulics@1.x]</c>. Each calculation states its formula, source and
/// range in its <see cref="CalculationDescription"/>.</para>
/// <para>Every calculation is total: for values outside its range it gives a reason, never NaN, infinity or an exception.</para>
/// </remarks>
/// <example>
/// <code>
/// var calculation = ElectrohydraulicsLibrary.Create().Find("locked-rotor-current");
/// var result = calculation.Compute([12, 0.06]);                              // 12 V and 0.06 ohm, in SI
/// Console.WriteLine(result.IsComputed ? $"{result.Value} A" : $"cannot be computed because {result.Reason}");
/// </code>
/// </example>
public static class ElectrohydraulicsLibrary
{
    /// <summary>The name packs ask for.</summary>
    public const string Name = "electrohydraulics";

    /// <summary>Makes the library; the result is immutable and may be shared between threads.</summary>
    public static CalculationLibrary Create() => new(Name, new Version(1, 0, 0),
    [
        new ConductorResistance(), new ConductorResistanceMost(), new ResistanceAt20(), new VehicleCableResistance(),
        new CableDrop(), new VehicleCableDrop(), new CableDropByData(), new WireGaugeArea(),
        new BatteryCharge(), new ElectrolyteDensity(), new BatteryChargeByDensity(), new BatteryVoltsByDensity(),
        new InternalResistance(), new LoadedVolts(), new LoopCurrent(), new DividedVolts(), new SeriesResistance(),
        new PermissibleDrop(), new PermissibleDropIntermittent(),
        new BladeFuseHolds(), new BladeFuseOpens(), new MaxiFuseHolds(), new MaxiFuseOpens(), new MaxiFuseDropMost(),
        new MaxiFuseCurrentLeast(), new FuseCurrent(), new FuseRatingLeast(),
        new LockedRotorCurrent(), new MotorBackEmf(), new EmfConstant(), new MotorSpeed(), new MotorTorque(),
        new WindingResistance(), new WindingTemperature(), new InsulationAt40(), new InsulationLeast(),
        new RelayCoilCurrent(), new RelayCoilPower(), new RelayPullInHot(), new ParallelResistance(), new ContactResistance(),
        new ContactHeat(),
        new CylinderForce(), new CylinderForceIn(), new CylinderPressure(), new CylinderVolume(), new CylinderTime(),
        new CylinderTimeIn(), new PumpFlow(), new HydraulicPower(), new PumpShaftPower(), new PumpMotorCurrent(), new FlowLost(),
        new LeakRate(), new Viscosity(), new ViscosityClassLeast(), new ViscosityClassMost(), new BulkModulus(),
        new SecantBulkModulus(), new OrificeFlow(), new OrificeDrop(), new CleanlinessCode(), new FluidLevel(),
        new VoltsUncertainty(), new DropUncertainty(), new OhmsUncertainty(), new MeterLimit("volts", "V"),
        new MeterLimit("amperes", "A"), new MeterLimit("ohms", "ohm"),
        new BoltTorque(), new BoltTorqueLeast(), new BoltTorqueMost(), new BoltTorqueAtYield(),
    ]);
}
