using DiagRules.TestSupport;

namespace DiagRules.Cli.Tests.Scenarios;

/// <summary>
/// Every <c>*.scenario</c> beside this file, run in a folder of its own that holds the test packs and plugins. With <c>DIAGRULES_WRITE_SCENARIOS=1</c>
/// the files are written anew instead; read the difference before you commit it.
/// </summary>
[Collection(CurrentFolder)]
public sealed class ScenarioTests : IDisposable
{
    /// <summary>Tests that change the process's current folder, and so must take turns.</summary>
    public const string CurrentFolder = "current folder";

    /// <summary>Set to 1, it makes the tests write what they should compare with.</summary>
    public const string WriteAnew = "DIAGRULES_WRITE_SCENARIOS";

    private readonly string _before = Directory.GetCurrentDirectory();
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("diagrules-scenario-");

    public static TheoryData<string> Names =>
        [.. Directory.EnumerateFiles(SourceFolder(), "*.scenario").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Scenario_PrintsWhatItSays(string name)
    {
        var file = Path.Combine(SourceFolder(), name + ".scenario");
        var expected = File.ReadAllText(file).ReplaceLineEndings("\n");
        Copy(Path.Combine(SourceFolder(), "..", "Packs"), _folder.FullName);
        Copy(Path.Combine(AppContext.BaseDirectory, "plugins"), Path.Combine(_folder.FullName, "plugins"));
        Directory.SetCurrentDirectory(_folder.FullName);

        var actual = Scenario.Parse(expected).Play();

        if (Environment.GetEnvironmentVariable(WriteAnew) == "1")
        {
            File.WriteAllText(file, actual);
        }

        actual.ShouldBe(expected.TrimEnd() + "\n", $"if the new text is right, run the tests once with {WriteAnew}=1");
    }

    public void Dispose()
    {
        Directory.SetCurrentDirectory(_before);
        _folder.Delete(recursive: true);
    }

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    private static string SourceFolder() => RepositoryFolder.At("tests", "DiagRules.Cli.Tests", "Scenarios");
}
