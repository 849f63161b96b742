using CsCheck;
using DiagRules.Model.Quantities;

namespace DiagRules.Electrohydraulics.Tests;

/// <summary>More of this never gives less (or more) of that, where physics says so.</summary>
public sealed class MonotoneTests
{
    /// <summary>Calculation, one usual call of it, and the parameters its result rises and falls with.</summary>
    private static readonly (string Name, string[] Usual, string Rises, string Falls)[] Laws =
    [
        ("conductor-resistance", ["6 m", "6 mm2", "40 degC"], "length temperature", "area"),
        ("cable-drop", ["50 A", "6 m", "6 mm2", "40 degC"], "current length temperature", "area"),
        ("cable-drop-by-data", ["50 A", "6 m", "3.1 mohm/m", "40 degC"], "current length resistance-per-length temperature", ""),
        ("vehicle-cable-drop", ["50 A", "6 m", "6 mm2", "40 degC"], "current length temperature", ""),
        ("vehicle-cable-resistance", ["6 m", "6 mm2", "40 degC"], "length temperature", ""),
        ("conductor-resistance-most", ["6 m", "6 mm2", "40 degC", "5"], "length temperature", ""),
        ("resistance-at-20", ["5 ohm", "40 degC"], "resistance", "temperature"),
        ("wire-gauge-area", ["12"], "", "gauge"),
        ("battery-charge", ["12.3 V", "15 degC"], "volts", "temperature"),
        ("battery-charge-by-density", ["1.2 kg/L", "15 degC"], "density temperature", ""),
        ("electrolyte-density", ["1.2 kg/L", "15 degC"], "density temperature", ""),
        ("battery-volts-by-density", ["1.2 kg/L"], "density", ""),
        ("internal-resistance", ["12.6 V", "10 V", "100 A"], "rest-volts", "load-volts current"),
        ("loaded-volts", ["12.6 V", "20 mohm", "100 A"], "rest-volts", "resistance current"),
        ("loop-current", ["12.6 V", "30 mohm", "60 mohm"], "supply", "feed-resistance load-resistance"),
        ("divided-volts", ["12.6 V", "30 mohm", "60 mohm"], "supply load-resistance", "feed-resistance"),
        ("series-resistance", ["120 V", "0.7 ohm", "15 A"], "supply", "load-resistance current"),
        ("blade-fuse-holds", ["10 A", "22 A"], "rating", "current"),
        ("blade-fuse-opens", ["10 A", "32 A"], "rating", "current"),
        ("maxi-fuse-holds", ["40 A", "60 A"], "rating", "current"),
        ("maxi-fuse-opens", ["40 A", "120 A"], "rating", "current"),
        ("maxi-fuse-drop-most", ["60 A", "15 A"], "current", "rating"),
        ("maxi-fuse-current-least", ["20 mV", "45 A"], "drop rating", ""),
        ("fuse-current", ["1 mV", "7.7 mohm"], "drop", "resistance"),
        ("fuse-rating-least", ["20 A"], "current", ""),
        ("locked-rotor-current", ["12 V", "60 mohm"], "supply", "resistance"),
        ("motor-back-emf", ["12 V", "50 A", "40 mohm"], "volts", "current resistance"),
        ("motor-speed", ["24 V", "50 A", "40 mohm", "4 V/rpm"], "volts", "current resistance"),
        ("emf-constant", ["24 V", "50 A", "40 mohm", "3000 rpm"], "volts", "current resistance"),
        ("motor-torque", ["0.1 N.m/A", "5 A"], "torque-constant current", ""),
        ("winding-resistance", ["60 mohm", "80 degC", "20 degC"], "resistance temperature", "measured-at"),
        ("winding-temperature", ["60 mohm", "72 mohm", "20 degC"], "hot-resistance cold-temperature", "cold-resistance"),
        ("insulation-at-40", ["3 Mohm", "30 degC"], "resistance temperature", ""),
        ("insulation-least", ["24 V"], "rated-volts", ""),
        ("relay-coil-current", ["12 V", "85 ohm", "40 degC"], "volts", "resistance temperature"),
        ("relay-pull-in-hot", ["8 V", "85 degC", "23 degC"], "pull-in temperature", "rated-at"),
        ("relay-coil-power", ["12 V", "85 ohm"], "volts", "resistance"),
        ("parallel-resistance", ["76 ohm", "680 ohm"], "first second", ""),
        ("contact-resistance", ["0.1 V", "40 A"], "drop", "current"),
        ("contact-heat", ["0.1 V", "40 A"], "drop current", ""),
        ("cylinder-force", ["150 bar", "40 mm"], "pressure bore", ""),
        ("cylinder-force-in", ["150 bar", "80 mm", "20 mm"], "pressure bore", "rod"),
        ("cylinder-pressure", ["10 kN", "40 mm"], "force", "bore"),
        ("cylinder-volume", ["40 mm", "300 mm"], "bore stroke", ""),
        ("cylinder-time", ["40 mm", "300 mm", "5 L/min"], "bore stroke", "flow"),
        ("cylinder-time-in", ["80 mm", "20 mm", "300 mm", "5 L/min"], "bore stroke", "rod flow"),
        ("pump-flow", ["2 cm3/rev", "2500 rpm", "45 %"], "displacement speed efficiency", ""),
        ("hydraulic-power", ["150 bar", "5 L/min"], "pressure flow", ""),
        ("pump-shaft-power", ["150 bar", "5 L/min", "45 %"], "pressure flow", "efficiency"),
        ("pump-motor-current", ["0.5 kW", "12 V", "45 %"], "power", "volts efficiency"),
        ("flow-lost", ["2.8 s", "3.9 s"], "time", "expected-time"),
        ("leak-rate", ["30", "1 min", "0.05 mL"], "drops drop-volume", "time"),
        ("viscosity", ["50 degC", "60 mm2/s", "4 mm2/s"], "", "temperature"),
        ("bulk-modulus", ["1.6 GPa", "2 %", "20 bar", "1 bar"], "liquid pressure", "air"),
        ("secant-bulk-modulus", ["100 bar", "0.6 %"], "pressure", "compression"),
        ("orifice-flow", ["2 mm", "100 bar", "870 kg/m3", "0.6"], "diameter drop coefficient", "density"),
        ("orifice-drop", ["2 mm", "30 L/min", "870 kg/m3", "0.6"], "flow density", "diameter coefficient"),
        ("cleanliness-code", ["2500"], "count", ""),
        ("fluid-level", ["150 mm", "50 mm", "500 mm", "40 degC", "20 degC"], "level marks-at", "temperature low-mark"),
        ("volts-limit", ["12.6 V", "0.5 %", "2", "10 mV"], "reading percent digits resolution", ""),
        ("volts-uncertainty", ["2 mV", "20 mV"], "scatter limit", ""),
        ("drop-uncertainty", ["80 mV", "80 mV"], "first-limit second-limit", ""),
        ("ohms-uncertainty", ["2 V", "20 mV", "50 A", "1 A"], "volts volts-limit current-limit", "current"),
        ("bolt-torque", ["8 mm", "8.8", "0.18"], "nut-factor", ""),
        ("bolt-torque-at-yield", ["8 mm", "8.8", "0.12"], "friction", ""),
    ];

    public static IEnumerable<TheoryDataRow<string>> Names => Laws.Select(law => new TheoryDataRow<string>(law.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void Compute_MoreOfOneArgument_MovesTheResultOneWay(string name)
    {
        var law = Laws.Single(row => row.Name == name);
        var calculation = Calling.Find(name);
        double[] usual = [.. law.Usual.Select(text => Calling.Read(text).Si)];
        var moving = law.Rises.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(parameter => (Parameter: parameter, Sign: 1))
            .Concat(law.Falls.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(parameter => (Parameter: parameter, Sign: -1)));
        foreach (var (parameter, sign) in moving)
        {
            var index = calculation.Description.Parameters.IndexOf(calculation.Description.Parameters.Single(one => one.Name == parameter));
            var computed = 0;

            Gen.Select(Gen.Double[0, 1].Array[usual.Length], Gen.Double[0, 1]).Sample((shares, other) =>
            {
                var low = Around(calculation.Description.Parameters, usual, shares, index);
                var high = low.ToArray();
                (low[index], high[index]) = Ordered(low[index], Move(calculation.Description.Parameters[index].Unit, usual[index], other));
                var (less, more) = (calculation.Compute(low), calculation.Compute(high));
                if (!less.IsComputed || !more.IsComputed)
                {
                    return true;
                }

                Interlocked.Increment(ref computed);
                return sign * (more.Value - less.Value) >= -1e-12 * Math.Abs(less.Value);
            }, iter: 500);

            computed.ShouldBeGreaterThan(250, $"calls of '{name}' that moved '{parameter}' and computed");
        }
    }

    /// <summary>Other arguments move too, but sizes, classes and gauges that come from tables stay.</summary>
    private static double[] Around(IReadOnlyList<Model.Calculations.CalculationParameter> parameters, double[] usual, double[] shares, int moved) =>
        [.. usual.Select((value, i) => i != moved && parameters[i].Name is "class" or "area" or "diameter" ? value : Move(parameters[i].Unit, value, shares[i]))];

    private static double Move(Unit unit, double value, double share) =>
        unit.IsPoint ? value + (60 * (share - 0.5)) : value * (0.85 + (0.3 * share));

    private static (double, double) Ordered(double a, double b) => a <= b ? (a, b) : (b, a);
}
