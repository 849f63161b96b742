using DiagRules.Model.Calculations;
using DiagRules.Model.Conditions;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Conditions;

/// <summary>The calculations every pack has: <c>min</c>, <c>max</c>, <c>mean</c> of any number of values of one kind, and <c>abs</c>.</summary>
/// <remarks>A calculation has fixed parameters, so one is made for each call, for as many values as that call gives.</remarks>
internal sealed class BuiltInCalculation : ICalculation
{
    public const string Min = "min";
    public const string Max = "max";
    public const string Abs = "abs";
    public const string Mean = "mean";

    private BuiltInCalculation(CalculationDescription description) => Description = description;

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = [Min, Max, Abs, Mean];

    public CalculationDescription Description { get; }

    /// <summary>Whether whole numbers stay whole.</summary>
    public bool KeepsCounts => Description.Name != Mean;

    /// <summary>How messages show what a built-in calculation takes.</summary>
    public static string Signature(string name) => name == Abs ? "abs(value)" : $"{name}(value, value, ...)";

    /// <summary>The calculation for a number of values of one type.</summary>
    public static BuiltInCalculation For(string name, int count, TermType type)
    {
        var unit = Measure.UnitOf(type);
        var names = count == 1 ? ["value"] : Enumerable.Range(1, count).Select(i => $"value-{i}");
        var (title, formula) = name switch
        {
            Min => ("The least of the values.", "min(values)"),
            Max => ("The greatest of the values.", "max(values)"),
            Abs => ("The value without its sign.", "|value|"),
            _ => ("The arithmetic mean of the values.", "sum(values) / count"),
        };
        return new(new CalculationDescription(
            name,
            title,
            [.. names.Select(parameter => new CalculationParameter(parameter, unit, "a value"))],
            unit,
            formula,
            "Definition.",
            "All values."));
    }

    public CalculationResult Compute(ReadOnlySpan<double> arguments)
    {
        if (arguments.IsEmpty)
        {
            return CalculationResult.Because("no value is given");
        }

        var (least, greatest, sum) = (arguments[0], arguments[0], 0.0);
        foreach (var argument in arguments)
        {
            least = Math.Min(least, argument);
            greatest = Math.Max(greatest, argument);
            sum += argument;
        }

        return Description.Name switch
        {
            Min => least,
            Max => greatest,
            Abs => Math.Abs(arguments[0]),
            _ => sum / arguments.Length,
        };
    }
}
