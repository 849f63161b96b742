namespace DiagRules.Model.Calculations;

/// <summary>A number in the coherent SI unit, or the reason why there is none. Immutable value.</summary>
public readonly record struct CalculationResult
{
    private CalculationResult(double value, string? reason)
    {
        Value = value;
        Reason = reason;
    }

    /// <summary>The result; NaN when there is none.</summary>
    public double Value { get; }

    /// <summary>Completes "cannot be computed because ..."; <see langword="null"/> when there is a value.</summary>
    public string? Reason { get; }

    /// <summary>Whether there is a value.</summary>
    public bool IsComputed => Reason is null;

    /// <summary>A result.</summary>
    public static CalculationResult Of(double value) => new(value, null);

    /// <summary>No result, and why; the text completes "cannot be computed because ...".</summary>
    public static CalculationResult Because(string reason) => new(double.NaN, reason);

    /// <summary>A result.</summary>
    public static implicit operator CalculationResult(double value) => Of(value);
}
