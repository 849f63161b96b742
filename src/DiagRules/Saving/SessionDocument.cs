using System.Text.Json.Serialization;
using DiagRules.Model;

namespace DiagRules.Saving;

/// <summary>A saved job as it stands in the file. The first key carries the version of this form.</summary>
internal sealed record SessionDocument
{
    public const int CurrentFormat = 1;

    [JsonPropertyName("diagrules-session")]
    public required int Format { get; init; }

    public required string Pack { get; init; }

    public required string Version { get; init; }

    public string? Chassis { get; init; }

    public string? Complaint { get; init; }

    public required IReadOnlyList<ObservationDocument> Observations { get; init; }
}

/// <summary>One observation of a saved job; the value as packs and people write it.</summary>
internal sealed record ObservationDocument
{
    public required string Id { get; init; }

    public required string Value { get; init; }

    public Skill? By { get; init; }

    public double? Trust { get; init; }

    public string? While { get; init; }

    public string? At { get; init; }

    public string? Note { get; init; }
}

[JsonSourceGenerationOptions(
    WriteIndented = true,
    PropertyNamingPolicy = JsonKnownNamingPolicy.KebabCaseLower,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    Converters = [typeof(KebabWords<Skill>)])]
[JsonSerializable(typeof(SessionDocument))]
internal sealed partial class SessionJsonContext : JsonSerializerContext;
