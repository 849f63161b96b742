using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;
using DiagRules.Model.Problems;

namespace DiagRules.Cli.Tests.Inputs;

public sealed class StrictnessTests
{
    private static readonly SourcePlace Place = new("pack", "pack.yaml", 3, 5);

    private static readonly Problem[] Problems =
    [
        new(ProblemCatalogue.NoSuchId, "No repair 'x'.", Place),
        new(ProblemCatalogue.UsedNowhere, "'lamp-power' is used nowhere.", Place),
        new(ProblemCatalogue.UsedNowhere, "'lamp-life' is used nowhere.", Place) { Accepted = "kept for later" },
        new(ProblemCatalogue.NoEntries, "The file holds no entries.", Place),
    ];

    [Fact]
    public void AcceptedWarnings_AreOnlyCounted() => Print(Problems).ShouldBe("""
        pack.yaml(3,5): error DR2004: No repair 'x'.
        pack.yaml(3,5): warning DR2012: 'lamp-power' is used nowhere.
        pack.yaml(3,5): note DR1012: The file holds no entries.
        2 packs: 1 error, 1 warning, 1 note, 1 accepted warning.

        """, StringCompareShould.IgnoreLineEndings);

    [Theory]
    [InlineData(true, new string[0], 2)]
    [InlineData(false, new[] { "DR2012" }, 2)]
    [InlineData(false, new[] { "DR2013" }, 1)]
    [InlineData(false, new string[0], 1)]
    public void WarningsThatAreAskedFor_CountAsErrors(bool isAll, string[] codes, int errors)
    {
        var strictness = new Strictness(isAll, codes, []);

        Problems.Select(strictness.Raise).Count(problem => problem.Severity == Severity.Error).ShouldBe(errors);
    }

    private static string Print(IReadOnlyList<Problem> problems)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        ProblemText.Write(writer, problems, 2);
        return writer.ToString();
    }
}
