using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>What <c>pack.yaml</c> says about the whole pack.</summary>
internal sealed record Head
{
    public required string Id { get; init; }

    public required string Version { get; init; }

    public required string Title { get; init; }

    public SourcePlace Place { get; init; }

    /// <summary>The map itself, for places of keys.</summary>
    public required MapNode Tree { get; init; }

    public string Language { get; init; } = "en";

    public double? LabourPerHour { get; init; }

    public Expense? SpecialistCost { get; init; }

    public double? Unlisted { get; init; }

    public double? Coexistence { get; init; }

    public ImmutableDictionary<Skill, double> Trust { get; init; } = ImmutableDictionary<Skill, double>.Empty;

    public ImmutableDictionary<string, double> Acceptance { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Warnings about the pack as a whole that it accepts.</summary>
    public ImmutableDictionary<string, string> Accepts { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Where a key is written, or the beginning of <c>pack.yaml</c>.</summary>
    public SourcePlace PlaceOf(string key) => Tree.Find(key)?.Key.Place ?? Tree.Place;
}
