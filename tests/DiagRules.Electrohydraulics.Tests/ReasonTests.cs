namespace DiagRules.Electrohydraulics.Tests;

/// <summary>Why there is no answer, as the reader sees it behind "cannot be computed because".</summary>
public sealed class ReasonTests
{
    [Fact]
    public void NotPositive() =>
        Reason("locked-rotor-current", "supply: 12 V", "resistance: 0 ohm").ShouldBe("'resistance' is 0 ohm and must be more than 0");

    [Fact]
    public void Negative() =>
        Reason("cylinder-force", "pressure: -1.5 bar", "bore: 40 mm").ShouldBe("'pressure' is -1.5 bar and may not be negative");

    [Fact]
    public void OutsideTheRange() =>
        Reason("cable-drop", "current: 50 A", "length: 6 m", "area: 6 mm2", "temperature: 400 degC")
            .ShouldBe("'temperature' is 400 degC and must lie between -60 degC and 200 degC");

    [Fact]
    public void NotFinite() =>
        Calling.Find("locked-rotor-current").Compute([double.PositiveInfinity, 1]).Reason.ShouldBe("'supply' is not a finite number");

    [Fact]
    public void TooLarge() =>
        Calling.Find("locked-rotor-current").Compute([1e300, 1e-300]).Reason.ShouldBe("the values are too large or too small to compute with");

    [Fact]
    public void MoreVoltsUnderLoad() =>
        Reason("internal-resistance", "rest-volts: 12.4 V", "load-volts: 12.6 V", "current: 5 A")
            .ShouldBe("there are more volts under load than at rest: a charger is at work, or the two readings are swapped");

    [Fact]
    public void ChargerConnected() =>
        Reason("battery-charge", "volts: 14.2 V").ShouldBe("'volts' is 14.2 V and must lie between 0 V and 13.2 V");

    [Theory]
    [InlineData("7 mm2", "7 mm2 is no nominal size of the table; the nearest are 6 mm2 and 10 mm2")]
    [InlineData("0.35 mm2", "0.35 mm2 is no nominal size of the table; the smallest is 0.5 mm2")]
    [InlineData("70 mm2", "70 mm2 is no nominal size of the table; the largest is 50 mm2")]
    public void NoNominalSize(string area, string reason)
    {
        Reason("vehicle-cable-resistance", "length: 1 m", $"area: {area}", "temperature: 20 degC").ShouldBe(reason);
        Reason("vehicle-cable-drop", "current: 1 A", "length: 1 m", $"area: {area}", "temperature: 20 degC").ShouldBe(reason);
        Reason("conductor-resistance-most", "length: 1 m", $"area: {area}", "temperature: 20 degC").ShouldBe(reason);
    }

    [Fact]
    public void NoConductorClass() =>
        Reason("conductor-resistance-most", "length: 1 m", "area: 6 mm2", "temperature: 20 degC", "class: 3").ShouldBe("'class' must be 2 (stranded) or 5 (flexible)");

    [Fact]
    public void NoSuchSystem() =>
        Reason("permissible-drop", "nominal: 48 V").ShouldBe("'nominal' is neither a 12 V (14 V) nor a 24 V (28 V) system");

    [Fact]
    public void FuseNeedNotOpen() =>
        Reason("blade-fuse-opens", "rating: 10 A", "current: 12 A").ShouldBe("below 1.35 times its rating the fuse need not open");

    [Fact]
    public void FuseBeyondTheStandard() =>
        Reason("maxi-fuse-holds", "rating: 40 A", "current: 150 A").ShouldBe("the current is beyond the standard's largest test current of 3.5 times the rating");

    [Fact]
    public void FuseOverloaded() =>
        Reason("maxi-fuse-drop-most", "rating: 40 A", "current: 50 A").ShouldBe("the limit holds up to the rated current and more than that flows");

    [Fact]
    public void MoreCurrentThanTheLoadTakes() =>
        Reason("series-resistance", "supply: 12 V", "load-resistance: 2 ohm", "current: 10 A")
            .ShouldBe("more current runs than the load alone would take: one of the readings is off, or part of the load is shorted");

    [Fact]
    public void WindingBeyondBelief() =>
        Reason("winding-temperature", "cold-resistance: 1 ohm", "hot-resistance: 3 ohm")
            .ShouldBe("the two resistances would put the winding outside -60 degC to 300 degC: turns are shorted or open, or one reading is off");

    [Fact]
    public void PlungersOnlyPush()
    {
        Reason("cylinder-force-in", "pressure: 100 bar", "bore: 40 mm", "rod: 40 mm").ShouldBe("the rod is as thick as the bore: a plunger ram cannot pull");
        Reason("cylinder-time-in", "bore: 40 mm", "rod: 40 mm", "stroke: 1 m", "flow: 5 L/min").ShouldBe("the rod is as thick as the bore: a plunger ram is not retracted by the pump");
    }

    [Fact]
    public void ViscositiesSwapped() =>
        Reason("viscosity", "temperature: 20 degC", "viscosity-40: 5 mm2/s", "viscosity-100: 32 mm2/s").ShouldBe("the viscosity at 100 degC must be below that at 40 degC");

    [Fact]
    public void ViscosityBeyondTheFormula() =>
        Reason("viscosity", "temperature: 150 degC", "viscosity-40: 10 mm2/s", "viscosity-100: 2.2 mm2/s")
            .ShouldBe("it would lie outside 2 to 20 million mm2/s, where the formula holds");

    [Fact]
    public void NoViscosityClass() =>
        Reason("viscosity-class-least", "class: 30")
            .ShouldBe("'class' is not one of the ISO VG classes 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500");

    [Fact]
    public void TooDirtyForTheScale() =>
        Reason("cleanliness-code", "count: 3000000").ShouldBe("there are more than 2.5 million particles per mL, beyond the last number of the scale");

    [Fact]
    public void MarksSwapped() =>
        Reason("fluid-level", "level: 100 mm", "low-mark: 200 mm", "high-mark: 160 mm", "temperature: 20 degC").ShouldBe("the upper mark must be above the lower one");

    [Theory]
    [InlineData("7 mm", "8.8", "M7 is not one of the coarse threads M3 to M24")]
    [InlineData("8 mm", "7", "there is no property class 7 for M8")]
    [InlineData("20 mm", "9.8", "there is no property class 9.8 for M20")]
    public void NoSuchBolt(string diameter, string propertyClass, string reason)
    {
        foreach (var name in (string[])["bolt-torque", "bolt-torque-least", "bolt-torque-most"])
        {
            Reason(name, $"diameter: {diameter}", $"class: {propertyClass}").ShouldBe(reason);
        }

        Reason("bolt-torque-at-yield", $"diameter: {diameter}", $"class: {propertyClass}", "friction: 0.12").ShouldBe(reason);
    }

    private static string? Reason(string name, params string[] arguments) =>
        Calling.Result(name, [.. arguments.Select(argument => argument.Split(": ")).Select(pair => (pair[0], pair[1]))]).Reason;
}
