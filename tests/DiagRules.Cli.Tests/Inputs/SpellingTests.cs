using DiagRules.Cli.Inputs;

namespace DiagRules.Cli.Tests.Inputs;

public sealed class SpellingTests
{
    [Theory]
    [InlineData("valdate", "validate")]
    [InlineData("dianose", "diagnose")]
    [InlineData("aks", "ask")]
    [InlineData("Ask", "ask")]
    [InlineData("report", null)]
    public void ASlipOfTheFingers_FindsTheWord(string typed, string? meant) =>
        Spelling.Nearest(typed, ["validate", "diagnose", "ask", "explain"]).ShouldBe(meant);
}
