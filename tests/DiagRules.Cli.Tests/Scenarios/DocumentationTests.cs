using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace DiagRules.Cli.Tests.Scenarios;

/// <summary>The page about the tool shows what the tool prints: every <c>console</c> block of it is run from the root of the repository.</summary>
[Collection(ScenarioTests.CurrentFolder)]
public sealed partial class DocumentationTests : IDisposable
{
    private readonly string _before = Directory.GetCurrentDirectory();

    [Fact]
    public void ThePageAboutTheTool_ShowsWhatItPrints()
    {
        var page = Path.Combine(Root(), "docs", "cli", "README.md");
        var expected = File.ReadAllText(page).ReplaceLineEndings("\n");
        Directory.SetCurrentDirectory(Root());

        var actual = ConsoleBlock().Replace(expected, block => $"```console\n{Play(block.Groups[1].Value)}```\n");

        if (Environment.GetEnvironmentVariable(ScenarioTests.WriteAnew) == "1")
        {
            File.WriteAllText(page, actual);
        }

        actual.ShouldBe(expected, $"if the new text is right, run the tests once with {ScenarioTests.WriteAnew}=1");
    }

    public void Dispose() => Directory.SetCurrentDirectory(_before);

    // A reader of the page takes it for granted that a command went well.
    private static string Play(string block) => Scenario.Parse(block).Play().Replace("= 0\n", "", StringComparison.Ordinal);

    private static string Root([CallerFilePath] string path = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, "..", "..", ".."));

    [GeneratedRegex("^```console\n(.*?)^```\n", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex ConsoleBlock();
}
