using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Calculations;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Conditions;

namespace DiagRules.Packs.Tests.Conditions;

/// <summary>The entries of an invented tail lift: one or more of each kind that a condition may name or must not name.</summary>
internal sealed class TestMachine : ISymbols
{
    private readonly Dictionary<string, Entry> _entries = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableArray<string>> _sets = new(StringComparer.Ordinal)
    {
        ["side"] = ["left", "right"],
        ["axle"] = ["front", "rear"],
        ["lone"] = ["only"],
        ["nobody"] = [],
    };

    private int _readings;
    private int _parameters;
    private int _nodes;

    public TestMachine()
    {
        var feed = Measured("fuse-feed", "V", new QuantityRange(Of(0, "V"), Of(32, "V")));
        var load = Measured("fuse-load", "V");
        Measured("pump-current", "A");
        Measured("motor-resistance", "mohm");
        Measured("oil-temperature", "degC");
        Measured("air-temperature", "degC");
        Measured("line-pressure", "bar");
        Measured("strokes", "number");
        Measured("charge", "%");
        Measured("flow", "mL/min");
        Measured("jack-2", "m");
        Derived("fuse-drop", "V", new ArithmeticTerm('-', Term(feed), Term(load), TermType.Of(feed.Unit), default));
        Limit("fuse-rating", 50, "A");
        Limit("relief-pressure", 180, "bar");
        Limit("low-volts", 11, "V");
        Graded("pump-fuse", "whole", "blown");
        Graded("pump-sound", "runs-freely", "runs-slowly", "stalled", "clicks-only", "silent");
        Graded("ram-left-wet", "dry", "damp", "drips");
        Graded("ram-right-wet", "dry", "damp", "drips");
        foreach (var wheel in (string[])["left-front", "left-rear", "right-front", "right-rear"])
        {
            Graded($"jack-{wheel}", "up", "stuck");
        }

        Add(new Effect { Id = "motor-supply", Index = 0, Title = "Motor supply", Grades = ["full", "weak", "none"], Node = _nodes++ });
        Cause("brushes-worn", null);
        Cause("switch-off", new Precondition(new Constant(Truth.True, "", default), "Switch it on.", null));
        Cause("lid-open", new Precondition(new Constant(Truth.True, "", default), null, null));
        Add(new Check { Id = "measure-pump-fuse", Index = 0, Title = "Measure", Gives = ["fuse-feed"] });
        Add(new Repair { Id = "renew-pump-fuse", Index = 0, Title = "Renew the fuse" });
        Add(new Complaint { Id = "will-not-lift", Index = 0, Title = "Will not lift" });
        Calculations = [new CalculationLibrary("electrohydraulics", new Version(1, 0), [new LockedRotorCurrent(), new WarmResistance()])];
    }

    public IEnumerable<string> Ids => _entries.Keys;

    public IEnumerable<string> Sets => _sets.Keys;

    public IReadOnlyDictionary<string, string> Copied { get; init; } = new Dictionary<string, string>();

    public IReadOnlyList<CalculationLibrary> Calculations { get; init; }

    public Entry? Find(string id) => _entries.GetValueOrDefault(id);

    public ImmutableArray<string>? Members(string set) => _sets.TryGetValue(set, out var members) ? members : null;

    public T Get<T>(string id)
        where T : Entry => (T)_entries[id];

    /// <summary>The graded entry of a node.</summary>
    public Graded Node(int node) => _entries.Values.OfType<Graded>().Single(graded => graded.Node == node);

    /// <summary>The same entries as a pack.</summary>
    public Pack ToPack() => new()
    {
        Id = "test-lift",
        Version = "1.0.0",
        Title = "Test lift",
        Readings = All<Reading>(),
        Nodes = All<Graded>(),
        Findings = All<Finding>(),
        Effects = All<Effect>(),
        Causes = All<Cause>(),
        Parameters = All<Parameter>(),
        Checks = All<Check>(),
        Repairs = All<Repair>(),
        Complaints = All<Complaint>(),
    };

    /// <summary>A derived reading.</summary>
    public Reading Derived(string id, string unit, Term from) =>
        Add(new Reading { Id = id, Index = _readings++, Title = id, Unit = UnitOf(unit), From = from });

    public static ReadingTerm Term(Reading reading) => new(reading, TermType.Of(reading.Unit), default);

    public static Unit UnitOf(string symbol) => UnitTable.TryGet(symbol, out var unit) ? unit : throw new ArgumentException(symbol, nameof(symbol));

    public static Quantity Of(double value, string unit) => new(value, UnitOf(unit));

    private Reading Measured(string id, string unit, QuantityRange? plausible = null) =>
        Add(new Reading { Id = id, Index = _readings++, Title = id, Question = id, Unit = UnitOf(unit), Plausible = plausible });

    private void Limit(string id, double value, string unit) =>
        Add(new Parameter { Id = id, Index = _parameters++, Title = id, Value = Of(value, unit) });

    private void Graded(string id, params string[] grades) =>
        Add(new Finding { Id = id, Index = 0, Title = id, Grades = [.. grades], Node = _nodes++ });

    private void Cause(string id, Precondition? precondition) =>
        Add(new Cause { Id = id, Index = 0, Title = id, Grades = Model.Cause.AbsentPresent, Node = _nodes++, Precondition = precondition });

    private T Add<T>(T entry)
        where T : Entry
    {
        _entries.Add(entry.Id, entry);
        return entry;
    }

    private ImmutableArray<T> All<T>()
        where T : Entry => [.. _entries.Values.OfType<T>()];

    /// <summary>Ohm's law; both arguments must be given.</summary>
    private sealed class LockedRotorCurrent : ICalculation
    {
        public CalculationDescription Description { get; } = new(
            "locked-rotor-current",
            "Current of a motor that stands.",
            [new("supply", UnitOf("V"), "volts at the motor"), new("resistance", UnitOf("ohm"), "resistance of the winding")],
            UnitOf("A"),
            "supply / resistance",
            "Ohm's law",
            "any");

        public CalculationResult Compute(ReadOnlySpan<double> arguments) =>
            arguments[1] == 0 ? CalculationResult.Because("the resistance is 0") : arguments[0] / arguments[1];
    }

    /// <summary>Has a parameter that is a point on the temperature scale, and a default.</summary>
    private sealed class WarmResistance : ICalculation
    {
        public CalculationDescription Description { get; } = new(
            "warm-resistance",
            "Resistance of a copper winding at a temperature.",
            [new("cold", UnitOf("ohm"), "resistance at 20 degC"), new("at", UnitOf("degC"), "temperature of the winding", 353.15)],
            UnitOf("ohm"),
            "cold * (234.5 + at) / (234.5 + 20)",
            "IEC 60028",
            "copper");

        public CalculationResult Compute(ReadOnlySpan<double> arguments) => arguments[0] * (234.5 + arguments[1] - 273.15) / 254.5;
    }
}
