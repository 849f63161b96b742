using DiagRules.Cli.Inputs;

namespace DiagRules.Cli.Tests.Inputs;

public sealed class FactTests
{
    [Theory]
    [InlineData("silent", "silent", false, false)]
    [InlineData("silent, doubtful", "silent", true, false)]
    [InlineData("12.4 V, working", "12.4 V", false, true)]
    [InlineData("slow or worse, working, doubtful", "slow or worse", true, true)]
    [InlineData("12,4", "12,4", false, false)]
    [InlineData("doubtful", "doubtful", false, false)]
    [InlineData("silent, doubtful, doubtful", "silent, doubtful", true, false)]
    public void WhatIsSaidAboutAValue_IsPartedFromIt(string text, string value, bool isDoubtful, bool isWhileWorking) =>
        Fact.Read(text).ShouldBe(new Fact(value, isDoubtful, isWhileWorking));
}
