using System.Text.RegularExpressions;
using DiagRules.Model.Problems;
using DiagRules.Packs;
using DiagRules.Replay;
using DiagRules.TestSupport;

namespace DiagRules.Tests.Replay;

/// <summary>The guide for technicians builds a pack, file by file: every step of it loads, and the whole is clean and finds its cases.</summary>
public sealed partial class GuideTests
{
    /// <summary>What the guide itself says of a step that is not the last.</summary>
    private static readonly string[] OnTheWay = [ProblemCatalogue.UsedNowhere.Code, ProblemCatalogue.CauseWithoutCase.Code];

    private static readonly string Guide = File.ReadAllText(RepositoryFolder.At("docs", "packs", "guide.md")).ReplaceLineEndings("\n");

    private static readonly (string Path, string Text)[] Blocks = [.. Block().Matches(Guide).Select(match => (match.Groups[1].Value, match.Groups[2].Value))];

    public static TheoryData<int> Steps => [.. Enumerable.Range(1, Blocks.Length)];

    [Fact]
    public void EverySample_IsAFileOfThePack() => Blocks.Length.ShouldBe(Guide.Split("```yaml\n").Length - 1);

    [Theory]
    [MemberData(nameof(Steps))]
    public void EveryStep_Loads(int step)
    {
        var result = Load(step);

        result.Problems.Where(problem => problem.Accepted is null && !OnTheWay.Contains(problem.Code)).Select(problem => problem.ToString()).ShouldBeEmpty();
        result.Pack.ShouldNotBeNull();
    }

    [Fact]
    public void WholePack_IsCleanAndFindsItsCases()
    {
        var result = Load(Blocks.Length);
        var pack = result.Require();

        result.Problems.Where(problem => problem.Accepted is null).ShouldBeEmpty();
        CaseChecks.Run(pack, TestContext.Current.CancellationToken).ShouldBeEmpty();
        pack.Cases.Length.ShouldBe(2);
        PackReplay.Play(pack, TestContext.Current.CancellationToken).Problems.ShouldBeEmpty();
    }

    [Fact]
    public void EveryLink_LeadsToAFile() =>
        Link().Matches(Guide).Select(match => match.Groups[1].Value).Where(link => !File.Exists(RepositoryFolder.At("docs", "packs", link))).ShouldBeEmpty();

    /// <summary>The files after a step; a later one of the same name takes the place of the earlier.</summary>
    private static PackLoadResult Load(int steps) =>
        new PackLoader().Load(PackFiles.FromText([.. Blocks.Take(steps).GroupBy(block => block.Path).Select(group => group.Last())]));

    [GeneratedRegex("^`([^`\n]+)`:\n```yaml\n(.*?)^```\n", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex(@"\]\(([^)#]+)\)")]
    private static partial Regex Link();
}
