using System.Collections.Immutable;
using DiagRules.Model.Problems;

namespace DiagRules.Model;

/// <summary>What all entries of a pack share. Entries are immutable and thread-safe.</summary>
public abstract record Entry
{
    /// <summary>The id, kebab-case, unique in the whole pack.</summary>
    public required string Id { get; init; }

    /// <summary>Position among the entries of its section, from 0; stable for one loaded pack.</summary>
    public required int Index { get; init; }

    /// <summary>What people read: the title, or the question where there is no title.</summary>
    public required string Title { get; init; }

    /// <summary>Where the id is written.</summary>
    public SourcePlace Place { get; init; }

    /// <summary>Chassis the entry is for; empty means all.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>Warnings the entry accepts, by code, each with its reason.</summary>
    public ImmutableDictionary<string, string> Accepts { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Keys of the host's own, <c>x-...</c>, with what stands under them.</summary>
    public ImmutableDictionary<string, HostValue> HostKeys { get; init; } = HostValue.None;

    /// <summary>Whether the entry is there on a chassis; <see langword="null"/> asks for no particular one.</summary>
    public bool IsOn(string? chassis) => chassis is null || Only.IsEmpty || Only.Contains(chassis, StringComparer.Ordinal);
}
