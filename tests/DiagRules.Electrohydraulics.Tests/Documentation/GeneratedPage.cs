namespace DiagRules.Electrohydraulics.Tests.Documentation;

/// <summary>
/// Pages that follow from the code, as a whole or below a marker. A test compares them; with <c>DIAGRULES_WRITE_DOCS=1</c> it writes them
/// instead: read the difference before you commit it.
/// </summary>
internal static class GeneratedPage
{
    public const string Marker = "<!-- What follows is compared with the code by a test, which prints the right text when it differs. -->";

    private const string WriteAnew = "DIAGRULES_WRITE_DOCS";

    /// <param name="path">Path from the root of the repository.</param>
    /// <param name="text">What must stand below the marker.</param>
    public static void ShouldEndWith(string path, string text)
    {
        var page = File.ReadAllText(FullPath(path)).ReplaceLineEndings("\n");
        var marker = page.IndexOf(Marker, StringComparison.Ordinal);
        marker.ShouldBeGreaterThan(0, $"'{path}' has no line '{Marker}'");

        ShouldBe(path, $"{page[..(marker + Marker.Length)]}\n\n{text.Trim('\n')}\n");
    }

    /// <param name="path">Path from the root of the repository.</param>
    /// <param name="text">What the page must be.</param>
    public static void ShouldBe(string path, string text)
    {
        var file = FullPath(path);
        if (Environment.GetEnvironmentVariable(WriteAnew) == "1")
        {
            File.WriteAllText(file, text);
        }

        var found = File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n") : "";
        if (found != text)
        {
            Assert.Fail($"'{path}' is out of date; if this is right, run the tests once with {WriteAnew}=1. It must read:\n\n{text}");
        }
    }

    /// <summary>Names of the pages in a folder, without their ending.</summary>
    public static IEnumerable<string> PagesIn(string folder) =>
        Directory.EnumerateFiles(FullPath(folder), "*.md").Select(file => Path.GetFileNameWithoutExtension(file)!);

    private static string FullPath(string path) => Path.Combine(Root(), path);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "DiagRules.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests do not run inside the repository: there is no DiagRules.sln above them.");
        }

        return folder.FullName;
    }
}
