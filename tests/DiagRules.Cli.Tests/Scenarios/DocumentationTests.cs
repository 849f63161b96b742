using System.Text.RegularExpressions;
using DiagRules.TestSupport;

namespace DiagRules.Cli.Tests.Scenarios;

/// <summary>Pages show what the tool prints: every <c>console</c> block of them is run from the root of the repository.</summary>
[Collection(ScenarioTests.CurrentFolder)]
public sealed partial class DocumentationTests : IDisposable
{
    private readonly string _before = Directory.GetCurrentDirectory();

    [Theory]
    [InlineData("README.md")]
    [InlineData("docs/cli/README.md")]
    [InlineData("docs/cli/charts.md")]
    [InlineData("docs/cli/testability.md")]
    public void APage_ShowsWhatTheToolPrints(string path)
    {
        var page = RepositoryFolder.At(path);
        var expected = File.ReadAllText(page).ReplaceLineEndings("\n");
        Directory.SetCurrentDirectory(RepositoryFolder.Root);

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

    [GeneratedRegex("^```console\n(.*?)^```\n", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex ConsoleBlock();
}
