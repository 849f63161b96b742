using System.Globalization;
using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;

namespace DiagRules.Electrohydraulics;

/// <summary>A parameter together with the values it may have; outside of them the calculation says why it has no answer.</summary>
internal sealed class Input
{
    private readonly double _least;
    private readonly double _most;
    private readonly string? _must;

    private Input(string name, string unit, string meaning, double? ifLeftOut, double least, double most, string? must)
    {
        var known = UnitTable.Get(unit);
        Parameter = new(name, known, meaning, ifLeftOut is { } value ? known.ToSi(value) : null);
        _least = least;
        _most = most;
        _must = must;
    }

    public CalculationParameter Parameter { get; }

    /// <summary>Any finite value.</summary>
    public static Input Any(string name, string unit, string meaning, double? ifLeftOut = null) =>
        new(name, unit, meaning, ifLeftOut, double.MinValue, double.MaxValue, null);

    /// <summary>Zero or more.</summary>
    public static Input NotNegative(string name, string unit, string meaning, double? ifLeftOut = null) =>
        new(name, unit, meaning, ifLeftOut, 0, double.MaxValue, "may not be negative");

    /// <summary>More than zero.</summary>
    public static Input Positive(string name, string unit, string meaning, double? ifLeftOut = null) =>
        new(name, unit, meaning, ifLeftOut, double.Epsilon, double.MaxValue, "must be more than 0");

    /// <summary>Both ends included, both in <paramref name="unit"/>.</summary>
    public static Input Between(double least, double most, string name, string unit, string meaning, double? ifLeftOut = null)
    {
        var known = UnitTable.Get(unit);
        var must = string.Create(CultureInfo.InvariantCulture, $"must lie between {new Quantity(least, known)} and {new Quantity(most, known)}");
        return new(name, unit, meaning, ifLeftOut, known.ToSi(least), known.ToSi(most), must);
    }

    /// <summary>Completes "cannot be computed because ..."; <see langword="null"/> when the value will do.</summary>
    public string? Refuse(double si) =>
        si >= _least && si <= _most ? null
        : double.IsFinite(si) ? $"'{Parameter.Name}' is {Quantity.FromSi(si, Parameter.Unit).Rounded()} and {_must}"
        : $"'{Parameter.Name}' is not a finite number";
}
