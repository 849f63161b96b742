using DiagRules.Model.Conditions;
using static DiagRules.Model.Conditions.Truth;

namespace DiagRules.Model.Tests.Conditions;

/// <summary>Tests of grades against what is known: one grade, several left open, or nothing.</summary>
public sealed class GradeTestTests
{
    private const int Node = 3;

    // For each state of five grades the test "is the second or third": unknown unless all that is open agrees.
    [Theory]
    [InlineData(0b00000, Unknown)]
    [InlineData(0b00010, True)]
    [InlineData(0b00110, True)]
    [InlineData(0b00100, True)]
    [InlineData(0b00001, False)]
    [InlineData(0b11001, False)]
    [InlineData(0b00011, Unknown)]
    [InlineData(0b11111, Unknown)]
    public void A_test_is_certain_when_all_open_grades_agree(byte open, Truth result)
    {
        var facts = new Facts { Open = { [Node] = new GradeSet(open) } };

        new GradeTest(Node, new GradeSet(0b00110), "", default).Evaluate(facts).ShouldBe(result);
    }

    [Theory]
    [InlineData(0b00, False, True)]
    [InlineData(0b01, True, False)]
    [InlineData(0b11, True, False)]
    public void Known_and_unknown_are_always_certain(byte open, Truth known, Truth unknown)
    {
        var facts = new Facts { Open = { [Node] = new GradeSet(open) } };

        new KnownGrade(Node, true, "", default).Evaluate(facts).ShouldBe(known);
        new KnownGrade(Node, false, "", default).Evaluate(facts).ShouldBe(unknown);
    }

    [Theory]
    [InlineData(double.NaN, False)]
    [InlineData(0.0, True)]
    [InlineData(double.PositiveInfinity, True)]
    [InlineData(double.NegativeInfinity, True)]
    public void A_reading_beyond_its_meters_range_is_known(double value, Truth known)
    {
        var facts = new Facts { Values = { [0] = value } };

        new KnownReading(0, true, "", default).Evaluate(facts).ShouldBe(known);
        new KnownReading(0, false, "", default).Evaluate(facts).ShouldBe(known == True ? False : True);
    }

    [Fact]
    public void Sets_of_grades_run_towards_the_worse_and_towards_the_better_end()
    {
        GradeSet.OrWorse(2, 5).ShouldBe(new GradeSet(0b11100));
        GradeSet.OrBetter(2).ShouldBe(new GradeSet(0b00111));
        GradeSet.OrWorse(7, 8).ShouldBe(new GradeSet(0b10000000));
        GradeSet.OrBetter(7).ShouldBe(GradeSet.All(8));
        GradeSet.Of(2).ComplementIn(5).ShouldBe(new GradeSet(0b11011));
        GradeSet.OrWorse(2, 5).First.ShouldBe(2);
        GradeSet.OrWorse(2, 5).Last.ShouldBe(4);
        GradeSet.OrWorse(2, 5).Count.ShouldBe(3);
        GradeSet.None.IsEmpty.ShouldBeTrue();
        GradeSet.Of(7).IsSingle.ShouldBeTrue();
    }
}
