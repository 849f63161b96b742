using System.Collections.Immutable;

namespace DiagRules.Model;

/// <summary>
/// What stands under a key of the host's own (<c>x-...</c>): kept as it is written, and not read. Text, a list or a map. Immutable.
/// </summary>
public sealed record HostValue
{
    /// <summary>No keys.</summary>
    public static readonly ImmutableDictionary<string, HostValue> None = ImmutableDictionary<string, HostValue>.Empty;

    /// <summary>The text, or <see langword="null"/> for a list or a map.</summary>
    public string? Text { get; init; }

    /// <summary>The items of a list; empty otherwise.</summary>
    public ImmutableArray<HostValue> Items { get; init; } = [];

    /// <summary>The members of a map by key; empty otherwise.</summary>
    public ImmutableDictionary<string, HostValue> Members { get; init; } = None;
}
