namespace DiagRules.Model.Quantities;

/// <summary>
/// The simple units. Factors are exact by definition (SI Brochure 9; NIST SP 811, appendix B; yard and pound agreement of 1959)
/// and written as quotients of whole numbers that doubles hold; only those with pi and <c>hp</c> (550 lbf.ft/s) are rounded.
/// <c>gal</c> and <c>qt</c> are the US liquid ones; <c>inHg</c> is the conventional one (13.5951 g/cm3, standard gravity).
/// </summary>
internal static class KnownUnits
{
    public static IEnumerable<Unit> All { get; } =
    [
        .. Plain(), .. Electric(), .. Mechanical(), .. Geometric(), .. TimeAndRotation(), .. Temperature(),
    ];

    private static IEnumerable<Unit> Plain() =>
    [
        Unit.Number, new("%", Dimension.None, 1, 100), new("ppm", Dimension.None, 1, 1e6),
    ];

    private static IEnumerable<Unit> Electric() =>
    [
        new("V", Dimensions.Voltage), new("uV", Dimensions.Voltage, 1, 1e6), new("mV", Dimensions.Voltage, 1, 1e3), new("kV", Dimensions.Voltage, 1e3),
        new("A", Dimensions.Current), new("nA", Dimensions.Current, 1, 1e9), new("uA", Dimensions.Current, 1, 1e6),
        new("mA", Dimensions.Current, 1, 1e3), new("kA", Dimensions.Current, 1e3),
        new("ohm", Dimensions.Resistance), new("uohm", Dimensions.Resistance, 1, 1e6), new("mohm", Dimensions.Resistance, 1, 1e3),
        new("kohm", Dimensions.Resistance, 1e3), new("Mohm", Dimensions.Resistance, 1e6), new("Gohm", Dimensions.Resistance, 1e9),
        new("S", Dimensions.Conductance), new("mS", Dimensions.Conductance, 1, 1e3), new("uS", Dimensions.Conductance, 1, 1e6),
        new("C", Dimensions.Charge), new("Ah", Dimensions.Charge, 3600), new("mAh", Dimensions.Charge, 18, 5),
        new("F", Dimensions.Capacitance), new("mF", Dimensions.Capacitance, 1, 1e3), new("uF", Dimensions.Capacitance, 1, 1e6),
        new("nF", Dimensions.Capacitance, 1, 1e9), new("pF", Dimensions.Capacitance, 1, 1e12),
        new("H", Dimensions.Inductance), new("mH", Dimensions.Inductance, 1, 1e3), new("uH", Dimensions.Inductance, 1, 1e6),
    ];

    private static IEnumerable<Unit> Mechanical() =>
    [
        new("W", Dimensions.Power), new("mW", Dimensions.Power, 1, 1e3), new("kW", Dimensions.Power, 1e3), new("MW", Dimensions.Power, 1e6),
        new("VA", Dimensions.Power), new("hp", Dimensions.Power, 745.69987158227022), new("PS", Dimensions.Power, 588399, 800),
        new("J", Dimensions.Energy), new("kJ", Dimensions.Energy, 1e3), new("MJ", Dimensions.Energy, 1e6),
        new("Wh", Dimensions.Energy, 3600), new("kWh", Dimensions.Energy, 3.6e6),
        new("N", Dimensions.Force), new("daN", Dimensions.Force, 10), new("kN", Dimensions.Force, 1e3), new("MN", Dimensions.Force, 1e6),
        new("kgf", Dimensions.Force, 980665, 1e5), new("lbf", Dimensions.Force, PoundForce, PoundForceDivisor),
        new("N.m", Dimensions.Torque), new("N.cm", Dimensions.Torque, 1, 100), new("N.mm", Dimensions.Torque, 1, 1e3),
        new("daN.m", Dimensions.Torque, 10), new("kN.m", Dimensions.Torque, 1e3), new("kgf.m", Dimensions.Torque, 980665, 1e5),
        new("lbf.ft", Dimensions.Torque, 3389544870828501, 25e14), new("lbf.in", Dimensions.Torque, 1129848290276167, 1e16),
        new("Pa", Dimensions.Pressure), new("mPa", Dimensions.Pressure, 1, 1e3), new("hPa", Dimensions.Pressure, 100),
        new("kPa", Dimensions.Pressure, 1e3), new("MPa", Dimensions.Pressure, 1e6), new("GPa", Dimensions.Pressure, 1e9),
        new("bar", Dimensions.Pressure, 1e5), new("mbar", Dimensions.Pressure, 100),
        new("psi", Dimensions.Pressure, PoundForce, 1290320000), new("inHg", Dimensions.Pressure, 3386.388640341),
        new("cSt", Dimensions.KinematicViscosity, 1, 1e6), new("cP", Dimensions.DynamicViscosity, 1, 1e3),
        new("kg", Dimensions.Mass), new("g", Dimensions.Mass, 1, 1e3), new("mg", Dimensions.Mass, 1, 1e6), new("t", Dimensions.Mass, 1e3),
        new("lb", Dimensions.Mass, 45359237, 1e8), new("oz", Dimensions.Mass, 45359237, 16e8),
        new("m/s2", Dimensions.Acceleration),
    ];

    private static IEnumerable<Unit> Geometric() =>
    [
        new("m", Dimensions.Length), new("um", Dimensions.Length, 1, 1e6), new("mm", Dimensions.Length, 1, 1e3), new("cm", Dimensions.Length, 1, 100),
        new("km", Dimensions.Length, 1e3), new("in", Dimensions.Length, 127, 5e3), new("ft", Dimensions.Length, 381, 1250),
        new("m2", Dimensions.Area), new("cm2", Dimensions.Area, 1, 1e4), new("mm2", Dimensions.Area, 1, 1e6), new("in2", Dimensions.Area, 16129, 25e6),
        new("m3", Dimensions.Volume), new("dm3", Dimensions.Volume, 1, 1e3), new("cm3", Dimensions.Volume, 1, 1e6), new("mm3", Dimensions.Volume, 1, 1e9),
        new("L", Dimensions.Volume, 1, 1e3), new("dL", Dimensions.Volume, 1, 1e4), new("cL", Dimensions.Volume, 1, 1e5),
        new("mL", Dimensions.Volume, 1, 1e6), new("uL", Dimensions.Volume, 1, 1e9),
        new("in3", Dimensions.Volume, 2048383, 125e9), new("gal", Dimensions.Volume, 473176473, 125e9), new("qt", Dimensions.Volume, 473176473, 5e11),
    ];

    private static IEnumerable<Unit> TimeAndRotation() =>
    [
        new("s", Dimensions.Time), new("us", Dimensions.Time, 1, 1e6), new("ms", Dimensions.Time, 1, 1e3),
        new("min", Dimensions.Time, 60), new("h", Dimensions.Time, 3600), new("d", Dimensions.Time, 86400),
        new("Hz", Dimensions.Frequency), new("kHz", Dimensions.Frequency, 1e3), new("MHz", Dimensions.Frequency, 1e6),
        new("rad", Dimensions.Angle), new("deg", Dimensions.Angle, Math.PI, 180), new("rev", Dimensions.Angle, 2 * Math.PI),
        new("rpm", Dimensions.Rotation, Math.PI, 30),
    ];

    private static IEnumerable<Unit> Temperature() =>
    [
        new("K", Dimensions.Temperature),
        new("degC", Dimensions.Temperature, offset: 273.15, isPoint: true),
        new("degF", Dimensions.Temperature, 5, 9, offset: 459.67 * 5 / 9, isPoint: true),
    ];

    /// <summary>0.45359237 kg times 9.80665 m/s2, 4.4482216152605 N, as a quotient that doubles hold exactly.</summary>
    private const double PoundForce = 8896443230521;

    private const double PoundForceDivisor = 2e12;
}
