using DiagRules.Model.Conditions;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>How messages name what is measured, and the units to show results of arithmetic in.</summary>
internal static class Measure
{
    private static readonly (string Unit, string Name)[] Known =
    [
        ("V", "voltage"), ("A", "current"), ("ohm", "resistance"), ("W", "power"), ("J", "energy"), ("C", "charge"),
        ("N", "force"), ("N.m", "torque"), ("Pa", "pressure"), ("m", "length"), ("m2", "area"), ("m3", "volume"),
        ("kg", "mass"), ("s", "time"), ("rad", "angle"), ("rad/s", "speed of turning"), ("Hz", "frequency"),
        ("K", "temperature difference"), ("m/s", "speed"), ("m3/s", "flow"), ("ohm.m", "resistivity"), ("kg/m3", "density"),
    ];

    private static readonly Dictionary<Dimension, (string Unit, string Name)> ByDimension = BuildByDimension();

    /// <summary>The kind of quantity: <c>voltage</c>, <c>temperature</c>, <c>number</c>.</summary>
    public static string Name(TermType type) =>
        type.IsPoint ? "temperature"
        : type.Dimension.IsNone ? "number"
        : ByDimension.TryGetValue(type.Dimension, out var known) ? known.Name
        : "quantity";

    /// <summary>The kind of quantity with its unit: <c>a voltage (V)</c>; <c>a number</c>.</summary>
    public static string Describe(TermType type) =>
        type.Dimension.IsNone && type.Unit == Unit.Number.Symbol ? "a number" : $"{Wording.An(Name(type))} ({type.Unit})";

    /// <summary>What is wanted instead of something else: <c>a voltage</c>, or <c>a quantity in A.m</c> where the kind has no name.</summary>
    public static string Want(TermType type) =>
        type.IsPoint || type.Dimension.IsNone || ByDimension.ContainsKey(type.Dimension) ? Wording.An(Name(type)) : $"a quantity in {type.Unit}";

    /// <summary>An example in the unit of a type: <c>5 V</c>.</summary>
    public static string Example(TermType type, string number = "5") =>
        type.Dimension.IsNone && type.Unit == Unit.Number.Symbol ? number : $"{number} {type.Unit}";

    /// <summary>The unit that the type of a term is shown in.</summary>
    public static Unit UnitOf(TermType type) => UnitTable.TryGet(type.Unit, out var unit) ? unit : Unit.Number;

    /// <summary>A unit for the product or quotient of two others, given its dimension; always one that the unit table knows.</summary>
    public static string Combine(string left, char sign, string right, Dimension dimension)
    {
        if (dimension.IsNone)
        {
            return Unit.Number.Symbol;
        }

        if (ByDimension.TryGetValue(dimension, out var known) && !known.Unit.Contains('/', StringComparison.Ordinal))
        {
            return known.Unit;
        }

        // The table reads from left to right, so 'L/s' and then '/min' is fine, while a quotient on the right would need brackets.
        var composed = left == Unit.Number.Symbol && sign == '*' ? right
            : right == Unit.Number.Symbol ? left
            : $"{left}{(sign == '*' ? '.' : '/')}{right}";
        return UnitTable.TryGet(composed, out var unit) && unit.Dimension == dimension ? composed : BaseUnits(dimension);
    }

    /// <summary>A product of base units: <c>kg/s/s</c>.</summary>
    private static string BaseUnits(Dimension dimension)
    {
        (string Symbol, int Power)[] powers =
        [
            ("kg", dimension.Mass), ("m", dimension.Length), ("A", dimension.Current), ("K", dimension.Temperature),
            ("rad", dimension.Angle), ("s", dimension.Time),
        ];
        var above = string.Join('.', powers.SelectMany(part => Enumerable.Repeat(part.Symbol, Math.Max(part.Power, 0))));
        var below = string.Concat(powers.SelectMany(part => Enumerable.Repeat("/" + part.Symbol, Math.Max(-part.Power, 0))));
        return (above.Length == 0 ? Unit.Number.Symbol : above) + below;
    }

    private static Dictionary<Dimension, (string Unit, string Name)> BuildByDimension()
    {
        var names = new Dictionary<Dimension, (string, string)>();
        foreach (var (symbol, name) in Known)
        {
            if (UnitTable.TryGet(symbol, out var unit))
            {
                names.TryAdd(unit.Dimension, (symbol, name));
            }
        }

        return names;
    }
}
