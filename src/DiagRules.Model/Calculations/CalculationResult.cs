namespace DiagRules.Model.Calculations;

/// <summary>A number in the coherent SI unit, or the reason why there is none. Immutable value.</summary>
public readonly record struct CalculationResult
{
    private CalculationResult(double value, string? reason, bool isFailure = false)
    {
        Value = value;
        Reason = reason;
        IsFailure = isFailure;
    }

    /// <summary>The result; NaN when there is none.</summary>
    public double Value { get; }

    /// <summary>Completes "cannot be computed because ..."; <see langword="null"/> when there is a value.</summary>
    public string? Reason { get; }

    /// <summary>Whether there is a value.</summary>
    public bool IsComputed => Reason is null;

    /// <summary>
    /// Whether there is no value through a fault of the calculation (problem DR7003): it threw, gave no finite number or ran too long.
    /// A calculation that has no answer for these values, and says so, has not failed.
    /// </summary>
    public bool IsFailure { get; }

    /// <summary>A result.</summary>
    public static CalculationResult Of(double value) => new(value, null);

    /// <summary>No result, and why; the text completes "cannot be computed because ...".</summary>
    public static CalculationResult Because(string reason) => new(double.NaN, reason);

    /// <summary>No result through a fault of the calculation; the text completes "cannot be computed because ...".</summary>
    public static CalculationResult Failed(string reason) => new(double.NaN, reason, isFailure: true);

    /// <summary>A result.</summary>
    public static implicit operator CalculationResult(double value) => Of(value);
}
