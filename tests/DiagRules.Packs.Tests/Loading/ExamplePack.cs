namespace DiagRules.Packs.Tests.Loading;

/// <summary>The tail lift of the invented maker Corrie that the tests share.</summary>
internal static class ExamplePack
{
    public static string Folder => Path.Combine(AppContext.BaseDirectory, "Data", "example-pack");

    /// <summary>Its files as text.</summary>
    public static IReadOnlyList<(string Path, string Text)> Files { get; } =
    [
        .. Directory.EnumerateFiles(Folder, "*.yaml", SearchOption.AllDirectories)
            .Select(file => (Path.GetRelativePath(Folder, file).Replace('\\', '/'), File.ReadAllText(file)))
            .OrderBy(file => file.Item1, StringComparer.Ordinal),
    ];
}
