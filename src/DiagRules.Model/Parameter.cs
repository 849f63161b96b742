using System.Collections.Immutable;
using DiagRules.Model.Quantities;

namespace DiagRules.Model;

/// <summary>A specification value. Immutable.</summary>
public sealed record Parameter : Entry
{
    /// <summary>Value where the chassis has none of its own.</summary>
    public required Quantity Value { get; init; }

    /// <summary>Values of particular chassis, by code.</summary>
    public ImmutableDictionary<string, Quantity> ByChassis { get; init; } = ImmutableDictionary<string, Quantity>.Empty;

    /// <summary>Where it comes from or when it holds, or <see langword="null"/>.</summary>
    public string? Note { get; init; }

    /// <summary>The value on a chassis.</summary>
    public Quantity On(string? chassis) => chassis is not null && ByChassis.TryGetValue(chassis, out var value) ? value : Value;
}
