using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Packs.Tests.Conditions;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Tests.Values;

public sealed class OpenGradesReaderTests
{
    [Theory]
    [InlineData("stalled", 0b00100)]
    [InlineData("clicks-only or silent", 0b11000)]
    [InlineData("runs-freely or stalled or silent", 0b10101)]
    [InlineData("stalled or worse", 0b11100)]
    [InlineData("stalled or better", 0b00111)]
    public void One_grade_several_or_a_stretch(string text, byte bits) => Sampled.Sound(text, Read).ShouldBe(new GradeSet(bits));

    [Theory]
    [InlineData("clicks-only or [|silnet|]", "Finding 'pump-sound' has no grade 'silnet'; its grades are 'runs-freely', 'runs-slowly', 'stalled', 'clicks-only' and 'silent'. Did you mean 'silent'?")]
    [InlineData("[|loud|] or worse", "Finding 'pump-sound' has no grade 'loud'; its grades are 'runs-freely', 'runs-slowly', 'stalled', 'clicks-only' and 'silent'.")]
    [InlineData("[|worse|]", "Finding 'pump-sound' has no grade 'worse'; its grades are 'runs-freely', 'runs-slowly', 'stalled', 'clicks-only' and 'silent'.")]
    [InlineData("[||]", "Finding 'pump-sound' has no grade ''; its grades are 'runs-freely', 'runs-slowly', 'stalled', 'clicks-only' and 'silent'.")]
    public void An_unknown_grade_comes_with_those_there_are(string marked, string message) => Sampled.ShouldFail(marked, Read, "DR2008", message);

    [Fact]
    public void More_grades_than_there_are_are_not_looked_up() => Sampled.ShouldFail(
        "[|silent or silent or silent or silent or silent or silent|]",
        Read,
        "DR2009",
        "'silent or silent or silent or silent or silent or silent' names 6 grades, and 'pump-sound' has only 5: 'runs-freely', 'runs-slowly', 'stalled', 'clicks-only' and 'silent'.");

    private static GradeSet? Read(PlacedText text, ProblemSink problems) =>
        OpenGradesReader.Read(text, new TestMachine().Get<Finding>("pump-sound"), problems);
}
