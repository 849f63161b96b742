namespace DiagRules.Model;

/// <summary>Something that can hurt. Immutable.</summary>
public sealed record Hazard : Entry
{
    /// <summary>How bad (ANSI Z535.6, ISO 3864-2).</summary>
    public required SignalWord SignalWord { get; init; }

    /// <summary>ISO 7010 number of the sign, e.g. <c>W012</c>, or <see langword="null"/>.</summary>
    public string? Symbol { get; init; }

    /// <summary>What it does.</summary>
    public required string Says { get; init; }

    /// <summary>How to keep out of its way, or <see langword="null"/>.</summary>
    public string? Avoid { get; init; }

    /// <summary>What makes it go away, or <see langword="null"/>.</summary>
    public string? Clears { get; init; }
}
