using System.Text.Json;
using System.Text.Json.Serialization;

namespace DiagRules;

/// <summary>Enumerations as the words packs use.</summary>
internal sealed class KebabWords<T>() : JsonStringEnumConverter<T>(JsonNamingPolicy.KebabCaseLower)
    where T : struct, Enum;
