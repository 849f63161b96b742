using System.Text.Json;
using System.Text.Json.Serialization;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules;

/// <summary>
/// A diagnosis as JSON: the one contract of library and tool. Keys are kebab-case, numbers invariant and written in full. Thread-safe.
/// </summary>
public static class DiagnosisJson
{
    /// <summary>Writes a diagnosis, indented.</summary>
    public static string Write(Diagnosis diagnosis)
    {
        ArgumentNullException.ThrowIfNull(diagnosis);
        return JsonSerializer.Serialize(diagnosis, DiagnosisJsonContext.Default.Diagnosis);
    }

    /// <summary>Reads back what <see cref="Write"/> wrote.</summary>
    /// <exception cref="JsonException">It is no diagnosis.</exception>
    public static Diagnosis Read(string json) =>
        JsonSerializer.Deserialize(json, DiagnosisJsonContext.Default.Diagnosis) ?? throw new JsonException("The text holds no diagnosis.");
}

[JsonSourceGenerationOptions(
    WriteIndented = true,
    PropertyNamingPolicy = JsonKnownNamingPolicy.KebabCaseLower,
    NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
    Converters = [typeof(KebabWords<StepKind>), typeof(KebabWords<Skill>), typeof(KebabWords<SignalWord>)])]
[JsonSerializable(typeof(Diagnosis))]
internal sealed partial class DiagnosisJsonContext : JsonSerializerContext;
