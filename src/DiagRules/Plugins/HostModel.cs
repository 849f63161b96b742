using System.Reflection;
using DiagRules.Model.Calculations;

namespace DiagRules.Plugins;

/// <summary>The one assembly that host and plugins share.</summary>
internal static class HostModel
{
    public static Assembly Assembly { get; } = typeof(ICalculation).Assembly;

    public static string Name { get; } = Assembly.GetName().Name!;

    /// <summary>Three numbers.</summary>
    public static Version Version { get; } = ThreeNumbers(Assembly.GetName().Version!);

    /// <summary>Whether a plugin built for some version runs on this one: not newer, and no incompatible change between (semver.org 2.0.0, items 4 and 8).</summary>
    public static bool Fits(Version builtFor) => Fits(builtFor, Version);

    internal static bool Fits(Version builtFor, Version host) =>
        builtFor <= host && builtFor.Major == host.Major && (host.Major > 0 || builtFor.Minor == host.Minor);

    public static Version ThreeNumbers(Version version) => new(version.Major, version.Minor, Math.Max(version.Build, 0));
}
