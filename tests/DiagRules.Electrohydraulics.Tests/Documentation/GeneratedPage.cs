namespace DiagRules.Electrohydraulics.Tests.Documentation;

/// <summary>A page whose lower part follows from the code: written by people down to a marker, compared with the code below it.</summary>
internal static class GeneratedPage
{
    public const string Marker = "<!-- What follows is compared with the code by a test, which prints the right text when it differs. -->";

    /// <param name="path">Path from the root of the repository.</param>
    /// <param name="text">What must stand below the marker.</param>
    public static void ShouldEndWith(string path, string text)
    {
        var page = File.ReadAllText(Path.Combine(Root(), path)).ReplaceLineEndings("\n");
        var marker = page.IndexOf(Marker, StringComparison.Ordinal);
        marker.ShouldBeGreaterThan(0, $"'{path}' has no line '{Marker}'");

        var found = page[(marker + Marker.Length)..].Trim('\n');
        if (found != text.Trim('\n'))
        {
            Assert.Fail($"'{path}' is out of date. Below the marker it must read:\n\n{text}");
        }
    }

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
