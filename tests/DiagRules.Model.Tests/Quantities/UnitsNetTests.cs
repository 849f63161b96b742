using DiagRules.Model.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace DiagRules.Model.Tests.Quantities;

/// <summary>Every unit that both know converts as in UnitsNet 5.75.1, a library with a table of its own.</summary>
public sealed class UnitsNetTests
{
    /// <summary>Our symbol, their unit, their coherent SI unit.</summary>
    private static readonly (string Symbol, Enum Unit, Enum Si)[] Pairs =
    [
        ("%", RatioUnit.Percent, RatioUnit.DecimalFraction), ("ppm", RatioUnit.PartPerMillion, RatioUnit.DecimalFraction),

        ("V", ElectricPotentialUnit.Volt, ElectricPotentialUnit.Volt), ("uV", ElectricPotentialUnit.Microvolt, ElectricPotentialUnit.Volt),
        ("mV", ElectricPotentialUnit.Millivolt, ElectricPotentialUnit.Volt), ("kV", ElectricPotentialUnit.Kilovolt, ElectricPotentialUnit.Volt),
        ("A", ElectricCurrentUnit.Ampere, ElectricCurrentUnit.Ampere), ("nA", ElectricCurrentUnit.Nanoampere, ElectricCurrentUnit.Ampere),
        ("uA", ElectricCurrentUnit.Microampere, ElectricCurrentUnit.Ampere), ("mA", ElectricCurrentUnit.Milliampere, ElectricCurrentUnit.Ampere),
        ("kA", ElectricCurrentUnit.Kiloampere, ElectricCurrentUnit.Ampere),
        ("ohm", ElectricResistanceUnit.Ohm, ElectricResistanceUnit.Ohm), ("uohm", ElectricResistanceUnit.Microohm, ElectricResistanceUnit.Ohm),
        ("mohm", ElectricResistanceUnit.Milliohm, ElectricResistanceUnit.Ohm), ("kohm", ElectricResistanceUnit.Kiloohm, ElectricResistanceUnit.Ohm),
        ("Mohm", ElectricResistanceUnit.Megaohm, ElectricResistanceUnit.Ohm), ("Gohm", ElectricResistanceUnit.Gigaohm, ElectricResistanceUnit.Ohm),
        ("S", ElectricConductanceUnit.Siemens, ElectricConductanceUnit.Siemens), ("mS", ElectricConductanceUnit.Millisiemens, ElectricConductanceUnit.Siemens),
        ("uS", ElectricConductanceUnit.Microsiemens, ElectricConductanceUnit.Siemens),
        ("C", ElectricChargeUnit.Coulomb, ElectricChargeUnit.Coulomb), ("Ah", ElectricChargeUnit.AmpereHour, ElectricChargeUnit.Coulomb),
        ("mAh", ElectricChargeUnit.MilliampereHour, ElectricChargeUnit.Coulomb),
        ("F", CapacitanceUnit.Farad, CapacitanceUnit.Farad), ("mF", CapacitanceUnit.Millifarad, CapacitanceUnit.Farad),
        ("uF", CapacitanceUnit.Microfarad, CapacitanceUnit.Farad), ("nF", CapacitanceUnit.Nanofarad, CapacitanceUnit.Farad),
        ("pF", CapacitanceUnit.Picofarad, CapacitanceUnit.Farad),
        ("H", ElectricInductanceUnit.Henry, ElectricInductanceUnit.Henry), ("mH", ElectricInductanceUnit.Millihenry, ElectricInductanceUnit.Henry),
        ("uH", ElectricInductanceUnit.Microhenry, ElectricInductanceUnit.Henry),
        ("ohm.m", ElectricResistivityUnit.OhmMeter, ElectricResistivityUnit.OhmMeter),

        ("W", PowerUnit.Watt, PowerUnit.Watt), ("mW", PowerUnit.Milliwatt, PowerUnit.Watt), ("kW", PowerUnit.Kilowatt, PowerUnit.Watt),
        ("MW", PowerUnit.Megawatt, PowerUnit.Watt), ("hp", PowerUnit.MechanicalHorsepower, PowerUnit.Watt), ("PS", PowerUnit.MetricHorsepower, PowerUnit.Watt),
        ("VA", ElectricApparentPowerUnit.Voltampere, ElectricApparentPowerUnit.Voltampere),
        ("J", EnergyUnit.Joule, EnergyUnit.Joule), ("kJ", EnergyUnit.Kilojoule, EnergyUnit.Joule), ("MJ", EnergyUnit.Megajoule, EnergyUnit.Joule),
        ("Wh", EnergyUnit.WattHour, EnergyUnit.Joule), ("kWh", EnergyUnit.KilowattHour, EnergyUnit.Joule),
        ("N", ForceUnit.Newton, ForceUnit.Newton), ("daN", ForceUnit.Decanewton, ForceUnit.Newton), ("kN", ForceUnit.Kilonewton, ForceUnit.Newton),
        ("MN", ForceUnit.Meganewton, ForceUnit.Newton), ("kgf", ForceUnit.KilogramForce, ForceUnit.Newton), ("lbf", ForceUnit.PoundForce, ForceUnit.Newton),
        ("N.m", TorqueUnit.NewtonMeter, TorqueUnit.NewtonMeter), ("N.cm", TorqueUnit.NewtonCentimeter, TorqueUnit.NewtonMeter),
        ("N.mm", TorqueUnit.NewtonMillimeter, TorqueUnit.NewtonMeter), ("kN.m", TorqueUnit.KilonewtonMeter, TorqueUnit.NewtonMeter),
        ("kgf.m", TorqueUnit.KilogramForceMeter, TorqueUnit.NewtonMeter), ("lbf.ft", TorqueUnit.PoundForceFoot, TorqueUnit.NewtonMeter),
        ("lbf.in", TorqueUnit.PoundForceInch, TorqueUnit.NewtonMeter),
        ("Pa", PressureUnit.Pascal, PressureUnit.Pascal), ("mPa", PressureUnit.Millipascal, PressureUnit.Pascal),
        ("hPa", PressureUnit.Hectopascal, PressureUnit.Pascal), ("kPa", PressureUnit.Kilopascal, PressureUnit.Pascal),
        ("MPa", PressureUnit.Megapascal, PressureUnit.Pascal), ("GPa", PressureUnit.Gigapascal, PressureUnit.Pascal),
        ("bar", PressureUnit.Bar, PressureUnit.Pascal), ("mbar", PressureUnit.Millibar, PressureUnit.Pascal),
        ("psi", PressureUnit.PoundForcePerSquareInch, PressureUnit.Pascal), ("inHg", PressureUnit.InchOfMercury, PressureUnit.Pascal),
        ("kgf/cm2", PressureUnit.KilogramForcePerSquareCentimeter, PressureUnit.Pascal), ("N/mm2", PressureUnit.NewtonPerSquareMillimeter, PressureUnit.Pascal),
        ("cSt", KinematicViscosityUnit.Centistokes, KinematicViscosityUnit.SquareMeterPerSecond),
        ("cP", DynamicViscosityUnit.Centipoise, DynamicViscosityUnit.PascalSecond), ("mPa.s", DynamicViscosityUnit.MillipascalSecond, DynamicViscosityUnit.PascalSecond),
        ("kg", MassUnit.Kilogram, MassUnit.Kilogram), ("g", MassUnit.Gram, MassUnit.Kilogram), ("mg", MassUnit.Milligram, MassUnit.Kilogram),
        ("t", MassUnit.Tonne, MassUnit.Kilogram), ("lb", MassUnit.Pound, MassUnit.Kilogram), ("oz", MassUnit.Ounce, MassUnit.Kilogram),
        ("kg/L", DensityUnit.KilogramPerLiter, DensityUnit.KilogramPerCubicMeter), ("g/cm3", DensityUnit.GramPerCubicCentimeter, DensityUnit.KilogramPerCubicMeter),
        ("m/s2", AccelerationUnit.MeterPerSecondSquared, AccelerationUnit.MeterPerSecondSquared),

        ("m", LengthUnit.Meter, LengthUnit.Meter), ("um", LengthUnit.Micrometer, LengthUnit.Meter), ("mm", LengthUnit.Millimeter, LengthUnit.Meter),
        ("cm", LengthUnit.Centimeter, LengthUnit.Meter), ("km", LengthUnit.Kilometer, LengthUnit.Meter), ("in", LengthUnit.Inch, LengthUnit.Meter),
        ("ft", LengthUnit.Foot, LengthUnit.Meter),
        ("m2", AreaUnit.SquareMeter, AreaUnit.SquareMeter), ("cm2", AreaUnit.SquareCentimeter, AreaUnit.SquareMeter),
        ("mm2", AreaUnit.SquareMillimeter, AreaUnit.SquareMeter), ("in2", AreaUnit.SquareInch, AreaUnit.SquareMeter),
        ("m3", VolumeUnit.CubicMeter, VolumeUnit.CubicMeter), ("dm3", VolumeUnit.CubicDecimeter, VolumeUnit.CubicMeter),
        ("cm3", VolumeUnit.CubicCentimeter, VolumeUnit.CubicMeter), ("mm3", VolumeUnit.CubicMillimeter, VolumeUnit.CubicMeter),
        ("L", VolumeUnit.Liter, VolumeUnit.CubicMeter), ("dL", VolumeUnit.Deciliter, VolumeUnit.CubicMeter), ("cL", VolumeUnit.Centiliter, VolumeUnit.CubicMeter),
        ("mL", VolumeUnit.Milliliter, VolumeUnit.CubicMeter), ("uL", VolumeUnit.Microliter, VolumeUnit.CubicMeter),
        ("in3", VolumeUnit.CubicInch, VolumeUnit.CubicMeter), ("gal", VolumeUnit.UsGallon, VolumeUnit.CubicMeter), ("qt", VolumeUnit.UsQuart, VolumeUnit.CubicMeter),

        ("s", DurationUnit.Second, DurationUnit.Second), ("us", DurationUnit.Microsecond, DurationUnit.Second), ("ms", DurationUnit.Millisecond, DurationUnit.Second),
        ("min", DurationUnit.Minute, DurationUnit.Second), ("h", DurationUnit.Hour, DurationUnit.Second), ("d", DurationUnit.Day, DurationUnit.Second),
        ("Hz", FrequencyUnit.Hertz, FrequencyUnit.Hertz), ("kHz", FrequencyUnit.Kilohertz, FrequencyUnit.Hertz), ("MHz", FrequencyUnit.Megahertz, FrequencyUnit.Hertz),
        ("rad", AngleUnit.Radian, AngleUnit.Radian), ("deg", AngleUnit.Degree, AngleUnit.Radian), ("rev", AngleUnit.Revolution, AngleUnit.Radian),
        ("rpm", RotationalSpeedUnit.RevolutionPerMinute, RotationalSpeedUnit.RadianPerSecond), ("deg/s", RotationalSpeedUnit.DegreePerSecond, RotationalSpeedUnit.RadianPerSecond),
        ("km/h", SpeedUnit.KilometerPerHour, SpeedUnit.MeterPerSecond), ("mm/s", SpeedUnit.MillimeterPerSecond, SpeedUnit.MeterPerSecond),
        ("L/min", VolumeFlowUnit.LiterPerMinute, VolumeFlowUnit.CubicMeterPerSecond), ("mL/min", VolumeFlowUnit.MilliliterPerMinute, VolumeFlowUnit.CubicMeterPerSecond),
        ("gal/min", VolumeFlowUnit.UsGallonPerMinute, VolumeFlowUnit.CubicMeterPerSecond), ("mL/s", VolumeFlowUnit.MilliliterPerSecond, VolumeFlowUnit.CubicMeterPerSecond),

        ("K", TemperatureUnit.Kelvin, TemperatureUnit.Kelvin), ("degC", TemperatureUnit.DegreeCelsius, TemperatureUnit.Kelvin),
        ("degF", TemperatureUnit.DegreeFahrenheit, TemperatureUnit.Kelvin),
    ];

    /// <summary>Simple symbols UnitsNet has no match for.</summary>
    private static readonly string[] Ours = ["number", "daN.m"];

    /// <summary>Their factor is rounded: 745.69 W, 0.10471975512 rad/s, 3600.00000001 C and so on. UnitTableTests has the printed values.</summary>
    private static readonly Dictionary<string, double> Rounded =
        new() { ["hp"] = 2e-5, ["inHg"] = 1e-8, ["rpm"] = 1e-9, ["Ah"] = 1e-11, ["mAh"] = 1e-11 };

    public static IEnumerable<TheoryDataRow<string>> Symbols => Pairs.Select(pair => new TheoryDataRow<string>(pair.Symbol));

    [Theory]
    [MemberData(nameof(Symbols))]
    public void ToSi_AsInUnitsNet(string symbol)
    {
        var (_, theirs, si) = Pairs.Single(pair => pair.Symbol == symbol);
        var unit = UnitTable.Get(symbol);
        var share = Rounded.GetValueOrDefault(symbol, 1e-12);
        var zero = unit.IsPoint ? 1e-12 * 300 : 0;
        foreach (var value in (double[])[1, 24.2, -17, 1e-3, 98_765])
        {
            var expected = UnitConverter.Convert(value, theirs, si);

            unit.ToSi(value).ShouldBe(expected, share * Math.Abs(expected));
            unit.FromSi(expected).ShouldBe(value, (share * Math.Abs(value)) + zero);
        }
    }

    [Fact]
    public void Symbols_EverySimpleOne_IsComparedOrNamed() =>
        UnitTable.Symbols.Except(Pairs.Select(pair => pair.Symbol)).ShouldBe(Ours, ignoreOrder: true);
}
