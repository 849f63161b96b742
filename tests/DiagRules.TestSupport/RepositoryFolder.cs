namespace DiagRules.TestSupport;

/// <summary>The clone of the repository that the tests were built in, for tests that look at its files.</summary>
public static class RepositoryFolder
{
    /// <summary>The folder that holds <c>DiagRules.sln</c>.</summary>
    public static string Root { get; } = Find();

    /// <summary>A path below it.</summary>
    public static string At(params ReadOnlySpan<string> parts) => Path.Combine([Root, .. parts]);

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "DiagRules.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("No DiagRules.sln above the tests; run them from a clone of the repository.");
    }
}
