using DiagRules.Cli.Asking;
using DiagRules.Model;

namespace DiagRules.Cli.Tests.Asking;

public sealed class ChoiceFormTests
{
    private static readonly Finding Sound = new()
    {
        Id = "pump-sound",
        Index = 0,
        Node = 0,
        Title = "Sound",
        Grades = ["runs", "runs-slowly", "clicks-once", "silent"],
    };

    private static readonly Cause Brushes = new() { Id = "brushes-worn", Index = 0, Node = 0, Title = "Brushes worn", Grades = Cause.AbsentPresent };

    [Theory]
    [InlineData("3", "clicks-once")]
    [InlineData("clicks-once", "clicks-once")]
    [InlineData("clicks once", "clicks-once")]
    [InlineData("CLICKS", "clicks-once")]
    [InlineData("s", "silent")]
    [InlineData("runs", "runs")]
    [InlineData("runs-", "runs-slowly")]
    [InlineData("runs s", "runs-slowly")]
    public void NumberWordOrUniqueBeginning_IsTaken(string typed, string grade) =>
        ChoiceForm.Of(Sound).Read(typed).Value.ShouldBe(grade);

    [Theory]
    [InlineData("clicks-once or worse", "clicks-once or worse")]
    [InlineData("2 or 3", "runs-slowly or clicks-once")]
    [InlineData("cl or si", "clicks-once or silent")]
    public void AnswersLeftOpen_AreTaken(string typed, string value) =>
        ChoiceForm.Of(Sound).Read(typed).Value.ShouldBe(value);

    [Theory]
    [InlineData("5", "There is no number 5; there are 1 to 4.")]
    [InlineData("0", "There is no number 0; there are 1 to 4.")]
    [InlineData("r", "'r' could be 'runs' or 'runs-slowly'.")]
    [InlineData("clicks-onze", "'clicks-onze' is none of the answers. Did you mean 'clicks-once'? Take a number, a word or its beginning; '?' if you cannot tell.")]
    [InlineData("2 or purrs", "'purrs' is none of the answers. Take a number, a word or its beginning; '?' if you cannot tell.")]
    public void WhatFitsNothing_IsRefusedInOneLine(string typed, string remark)
    {
        var answer = ChoiceForm.Of(Sound).Read(typed);

        answer.Value.ShouldBeNull();
        answer.Remark.ShouldBe(remark);
    }

    [Theory]
    [InlineData("yes", "present")]
    [InlineData("n", "absent")]
    [InlineData("present", "present")]
    [InlineData("1", "absent")]
    public void ACauseSeenWithOnesOwnEyes_TakesYesAndNo(string typed, string value) =>
        ChoiceForm.Of(Brushes).Read(typed).Value.ShouldBe(value);
}
