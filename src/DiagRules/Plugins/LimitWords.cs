using System.Globalization;

namespace DiagRules.Plugins;

/// <summary>A time limit in words.</summary>
internal static class LimitWords
{
    public static string Of(TimeSpan limit) => limit.TotalSeconds >= 1
        ? string.Create(CultureInfo.InvariantCulture, $"{limit.TotalSeconds:0.###} s")
        : string.Create(CultureInfo.InvariantCulture, $"{limit.TotalMilliseconds:0.###} ms");
}
