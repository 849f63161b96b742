using System.Reflection;
using DiagRules.TestSupport;

namespace DiagRules.Conventions.Tests;

/// <summary>The repository these tests were built from.</summary>
internal static class Repository
{
    public static string Root => RepositoryFolder.Root;

    /// <summary>Names of the libraries of the product, each a folder, an assembly and a namespace.</summary>
    public static IReadOnlyList<string> Libraries { get; } =
        [.. Directory.GetDirectories(Path.Combine(Root, "src")).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal)];

    public static Assembly Load(string library) => Assembly.Load(library);

    public static IEnumerable<string> SourceFiles(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Where(file => !IsBuildOutput(file))
            .Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);

    private static bool IsBuildOutput(string file) =>
        file.Split(Path.DirectorySeparatorChar) is var parts && (parts.Contains("obj") || parts.Contains("bin"));
}
