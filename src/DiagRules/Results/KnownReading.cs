namespace DiagRules.Results;

/// <summary>A reading that is known. Immutable.</summary>
/// <param name="Reading">Id.</param>
/// <param name="Title">Title.</param>
/// <param name="Value">Value in <paramref name="Unit"/>; an infinity when beyond the meter's range.</param>
/// <param name="Unit">Unit the pack shows it in.</param>
/// <param name="PlusMinus">Limit of error at coverage factor 2, in the same unit; <see langword="null"/> when no accuracy is stated.</param>
public sealed record KnownReading(string Reading, string Title, double Value, string Unit, double? PlusMinus)
{
    /// <summary>Whether it derives from others.</summary>
    public bool IsDerived { get; init; }
}
