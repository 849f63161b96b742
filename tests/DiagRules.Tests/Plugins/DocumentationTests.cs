using DiagRules.TestSupport;

namespace DiagRules.Tests.Plugins;

public sealed class DocumentationTests
{
    /// <summary>The page shows a plugin; the sample beside it is what compiles.</summary>
    [Fact]
    public void ThePluginOnThePage_IsTheSample()
    {
        var folder = Path.Combine(RepositoryFolder.Root, "docs", "plugins");
        var page = File.ReadAllText(Path.Combine(folder, "README.md")).ReplaceLineEndings("\n");
        var shown = page.Split("```csharp\n")[1].Split("```")[0].Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var compiled = Directory.EnumerateFiles(Path.Combine(folder, "sample"), "*.cs").SelectMany(File.ReadAllLines).Select(line => line.TrimEnd()).ToHashSet();

        shown.Length.ShouldBeGreaterThan(3);
        shown.Where(line => !compiled.Contains(line)).ShouldBeEmpty();
    }
}
