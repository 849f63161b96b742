using CsCheck;

namespace DiagRules.Electrohydraulics.Tests;

/// <summary>Calculations worked out by hand where no published value is at hand, and pairs that undo each other.</summary>
public sealed class FormulaTests
{
    /// <summary>pi/4 (63^2 - 36^2) mm2 = 2099.37 mm2; times 100 bar, or times 200 mm over 6 L/min.</summary>
    [Fact]
    public void CylinderIn_UsesTheRing()
    {
        Calling.Value("cylinder-force-in", ("pressure", "100 bar"), ("bore", "63 mm"), ("rod", "36 mm")).ShouldBe(20_993.7, 0.1);
        Calling.Value("cylinder-time-in", ("bore", "63 mm"), ("rod", "36 mm"), ("stroke", "200 mm"), ("flow", "6 L/min")).ShouldBe(4.19874, 1e-5);
    }

    /// <summary>pi/4 (20 mm)^2 = 314.159 mm2; times 200 mm is 62.83 mL; at 1.35 L/min = 22.5 mL/s that takes 2.7925 s.</summary>
    [Fact]
    public void CylinderTime_IsVolumeOverFlow() =>
        Calling.Value("cylinder-time", ("bore", "20 mm"), ("stroke", "200 mm"), ("flow", "1.35 L/min")).ShouldBe(2.79253, 1e-5);

    [Theory]
    [InlineData("3 s", "4 s", 25)]
    [InlineData("3 s", "3 s", 0)]
    [InlineData("3 s", "2.5 s", 0)]
    public void FlowLost_IsTheShareThatWentAnotherWay(string expected, string time, double percent) =>
        Calling.Value("flow-lost", ("expected-time", expected), ("time", time)).ShouldBe(percent, 1e-9);

    /// <summary>At 70 degC the oil stands 3.5 % higher than at 20 degC: 207 mm become 199.755 mm, of marks at 160 and 200 mm.</summary>
    [Theory]
    [InlineData("200 mm", "20 degC", 100)]
    [InlineData("160 mm", "20 degC", 0)]
    [InlineData("207 mm", "70 degC", 99.3875)]
    [InlineData("150 mm", "20 degC", -25)]
    public void FluidLevel_IsTakenAtTheTemperatureOfTheMarks(string level, string temperature, double percent) =>
        Calling.Value("fluid-level", ("level", level), ("low-mark", "160 mm"), ("high-mark", "200 mm"), ("temperature", temperature)).ShouldBe(percent, 1e-6);

    /// <summary>1.5 % of 80 A and 3 digits of 0.1 A; 0.9 % of 68 ohm and 2 digits of 0.1 ohm.</summary>
    [Fact]
    public void MeterLimits_OfOtherQuantities()
    {
        Calling.Value("amperes-limit", ("reading", "-80 A"), ("percent", "1.5 %"), ("digits", "3"), ("resolution", "0.1 A")).ShouldBe(1.5, 1e-12);
        Calling.Value("ohms-limit", ("reading", "68 ohm"), ("percent", "0.9 %"), ("digits", "2"), ("resolution", "0.1 ohm")).ShouldBe(0.812, 1e-12);
    }

    /// <summary>2 V give or take 20 mV over 50 A give or take 1 A: parts 0.4 and 0.8 mohm, together 0.8944 / sqrt(3), twice that.</summary>
    [Fact]
    public void OhmsUncertainty_AddsSquares() =>
        Calling.Value("ohms-uncertainty", ("volts", "2 V"), ("volts-limit", "20 mV"), ("current", "50 A"), ("current-limit", "1 A")).ShouldBe(1.0328e-3, 1e-7);

    /// <summary>0.017241 * 6 / 6 * (1 + 0.00393 * 40) ohm, times 50 A.</summary>
    [Fact]
    public void CableDrop_IsResistanceTimesCurrent()
    {
        Calling.Value("conductor-resistance", ("length", "6 m"), ("area", "6 mm2"), ("temperature", "60 degC")).ShouldBe(0.0199513, 1e-7);
        Calling.Value("cable-drop", ("current", "50 A"), ("length", "6 m"), ("area", "6 mm2"), ("temperature", "60 degC")).ShouldBe(0.997564, 1e-6);
    }

    /// <summary>20 K above 25 degC are worth 30 mV: 12.48 V then is 12.45 V, three quarters.</summary>
    [Fact]
    public void BatteryCharge_WarmBattery_CountsFewerVolts() =>
        Calling.Value("battery-charge", ("volts", "12.48 V"), ("temperature", "45 degC")).ShouldBe(0.75, 1e-9);

    [Theory]
    [InlineData("15 A", 1800)]
    [InlineData("19.9 A", 1800)]
    [InlineData("20 A", 5)]
    [InlineData("100 A", 0.1)]
    public void BladeFuse_BetweenTestCurrents_TheNeighbourBinds(string current, double seconds) =>
        Calling.Value("blade-fuse-opens", ("rating", "10 A"), ("current", current)).ShouldBe(seconds);

    [Fact]
    public void Fuses_HoldNoLongerThanTheyMayTake() =>
        Gen.Select(Gen.OneOf("blade-fuse", "maxi-fuse"), Gen.Double[27, 240]).Sample((type, current) =>
        {
            var holds = Calling.Result($"{type}-holds", ("rating", "20 A"), ("current", Calling.Text(current, "A")));
            var opens = Calling.Result($"{type}-opens", ("rating", "20 A"), ("current", Calling.Text(current, "A")));
            return !holds.IsComputed || holds.Value < opens.Value;
        });

    [Fact]
    public void Viscosity_AtTheGivenPoints_IsWhatWasGiven() =>
        Gen.Select(Gen.Double[10, 500], Gen.Double[2.1, 9]).Sample((at40, at100) =>
        {
            (string, string)[] given = [("viscosity-40", Calling.Text(at40, "mm2/s")), ("viscosity-100", Calling.Text(at100, "mm2/s"))];
            return Math.Abs(Calling.Value("viscosity", [("temperature", "40 degC"), .. given]) - at40) < 1e-9 * at40
                && Math.Abs(Calling.Value("viscosity", [("temperature", "100 degC"), .. given]) - at100) < 1e-9 * at100;
        });

    [Fact]
    public void WindingTemperature_UndoesWindingResistance() =>
        Gen.Select(Gen.Double[-40, 60], Gen.Double[-40, 240]).Sample((cold, hot) =>
        {
            var resistance = Calling.Value("winding-resistance", ("resistance", "60 mohm"), ("measured-at", Calling.Text(cold, "degC")), ("temperature", Calling.Text(hot, "degC")));
            var back = Calling.Value("winding-temperature", ("cold-resistance", "60 mohm"), ("cold-temperature", Calling.Text(cold, "degC")), ("hot-resistance", Calling.Text(resistance, "ohm")));
            return Math.Abs(back - hot) < 1e-9;
        });

    [Fact]
    public void OrificeDrop_UndoesOrificeFlow() =>
        Gen.Select(Gen.Double[0.3, 5], Gen.Double[1, 300]).Sample((diameter, drop) =>
        {
            var flow = Calling.Value("orifice-flow", ("diameter", Calling.Text(diameter, "mm")), ("drop", Calling.Text(drop, "bar")));
            return Math.Abs(Calling.Value("orifice-drop", ("diameter", Calling.Text(diameter, "mm")), ("flow", Calling.Text(flow, "L/min"))) - drop) < 1e-9 * drop;
        });

    [Fact]
    public void CylinderPressure_UndoesCylinderForce() =>
        Gen.Select(Gen.Double[10, 120], Gen.Double[1, 300]).Sample((bore, pressure) =>
        {
            var force = Calling.Value("cylinder-force", ("bore", Calling.Text(bore, "mm")), ("pressure", Calling.Text(pressure, "bar")));
            return Math.Abs(Calling.Value("cylinder-pressure", ("bore", Calling.Text(bore, "mm")), ("force", Calling.Text(force, "N"))) - pressure) < 1e-9 * pressure;
        });

    [Fact]
    public void SeriesResistance_FindsTheFeedOfLoopCurrent() =>
        Gen.Select(Gen.Double[0.001, 1], Gen.Double[0.01, 100]).Sample((feed, load) =>
        {
            var current = Calling.Value("loop-current", ("supply", "12.6 V"), ("feed-resistance", Calling.Text(feed, "ohm")), ("load-resistance", Calling.Text(load, "ohm")));
            var found = Calling.Value("series-resistance", ("supply", "12.6 V"), ("load-resistance", Calling.Text(load, "ohm")), ("current", Calling.Text(current, "A")));
            return Math.Abs(found - feed) < 1e-9;
        });
}
