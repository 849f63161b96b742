using DiagRules.Model.Problems;

namespace DiagRules.Packs.Tests.Loading;

public class ExamplePackTests
{
    [Fact]
    public void ExamplePack_LoadsWithoutErrors()
    {
        var result = new PackLoader().Load(ExamplePack.Folder);

        result.Problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.ToString()).ShouldBeEmpty();
        result.Require().Cases.Length.ShouldBe(12);
    }
}
