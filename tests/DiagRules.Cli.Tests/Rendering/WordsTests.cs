using DiagRules.Cli.Rendering;

namespace DiagRules.Cli.Tests.Rendering;

public sealed class WordsTests
{
    [Theory]
    [InlineData(0, "0 %")]
    [InlineData(0.0001, "<1 %")]
    [InlineData(0.005, "1 %")]
    [InlineData(0.625, "63 %")]
    [InlineData(0.994, "99 %")]
    [InlineData(0.996, ">99 %")]
    [InlineData(1, "100 %")]
    public void Percent_NeverRoundsToNothingOrToCertainty(double probability, string text) =>
        Words.Percent(probability).ShouldBe(text);

    [Theory]
    [InlineData(0.2, "less than a minute")]
    [InlineData(1, "1 minute")]
    [InlineData(14.5, "15 minutes")]
    [InlineData(119.4, "119 minutes")]
    [InlineData(119.6, "2 hours")]
    [InlineData(642.9, "10 h 43 min")]
    public void Minutes_BecomeHoursWhenTheyAreMany(double minutes, string text) =>
        Words.Minutes(minutes).Replace('\u00a0', ' ').ShouldBe(text);

    // Good 1950: ten decibans make the odds ten times better, twenty a hundred times.
    [Theory]
    [InlineData(10, "10 to 1 for it")]
    [InlineData(-20, "100 to 1 against it")]
    [InlineData(3.0103, "2 to 1 for it")]
    [InlineData(-1.76, "1.5 to 1 against it")]
    [InlineData(50, "over 1000 to 1 for it")]
    [InlineData(double.PositiveInfinity, "proves it")]
    [InlineData(double.NegativeInfinity, "excludes it")]
    public void Odds_AreTenToTheTenthOfTheDecibans(double decibans, string text) =>
        Words.Odds(decibans).Replace('\u00a0', ' ').ShouldBe(text);

    [Theory]
    [InlineData(0, "ruled out")]
    [InlineData(0.04, "remote")]
    [InlineData(0.05, "unlikely")]
    [InlineData(0.39, "possible")]
    [InlineData(0.5, "about even")]
    [InlineData(0.79, "likely")]
    [InlineData(0.9, "very likely")]
    [InlineData(0.95, "almost certain")]
    public void Belief_HasAWordForEveryConfidence(double confidence, string word) =>
        Words.Belief(confidence).ShouldBe(word);
}
