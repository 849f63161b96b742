namespace DiagRules.Model.Quantities;

/// <summary>The dimensions that have a name, each built from the ones before it (ISO 80000-3 to -6).</summary>
internal static class Dimensions
{
    public static readonly Dimension Length = new(Length: 1);
    public static readonly Dimension Mass = new(Mass: 1);
    public static readonly Dimension Time = new(Time: 1);
    public static readonly Dimension Current = new(Current: 1);
    public static readonly Dimension Temperature = new(Temperature: 1);
    public static readonly Dimension Angle = new(Angle: 1);

    public static readonly Dimension Area = Length * Length;
    public static readonly Dimension Volume = Area * Length;
    public static readonly Dimension Frequency = Dimension.None / Time;
    public static readonly Dimension Rotation = Angle / Time;
    public static readonly Dimension Speed = Length / Time;
    public static readonly Dimension Acceleration = Speed / Time;
    public static readonly Dimension Flow = Volume / Time;
    public static readonly Dimension Displacement = Volume / Angle;
    public static readonly Dimension Density = Mass / Volume;

    public static readonly Dimension Force = Mass * Acceleration;
    public static readonly Dimension Pressure = Force / Area;
    public static readonly Dimension Energy = Force * Length;
    public static readonly Dimension Torque = Energy / Angle;
    public static readonly Dimension Power = Energy / Time;
    public static readonly Dimension DynamicViscosity = Pressure * Time;
    public static readonly Dimension KinematicViscosity = Area / Time;

    public static readonly Dimension Charge = Current * Time;
    public static readonly Dimension Voltage = Power / Current;
    public static readonly Dimension Resistance = Voltage / Current;
    public static readonly Dimension Conductance = Current / Voltage;
    public static readonly Dimension Capacitance = Charge / Voltage;
    public static readonly Dimension Inductance = Voltage * Time / Current;
}
