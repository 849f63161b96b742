using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tests.Conditions;

/// <summary>A condition that was read, and what was said about it.</summary>
internal sealed record Parsed(Condition? Condition, IReadOnlyList<Problem> Problems)
{
    public static Parsed From(string text, TestMachine? machine = null, ConditionLimits? limits = null) =>
        From(Marked.Parse(text).Placed, machine, limits);

    public static Parsed From(PlacedText text, TestMachine? machine = null, ConditionLimits? limits = null)
    {
        var problems = new ProblemSink();
        var condition = new ConditionParser(machine ?? new TestMachine(), problems, limits).ReadCondition(text);
        return new(condition, problems.InOrder());
    }

    /// <summary>The condition of a text that must be readable.</summary>
    public static Condition Sound(string text, TestMachine? machine = null)
    {
        var parsed = From(text, machine);
        parsed.Problems.ShouldBeEmpty();
        return parsed.Condition.ShouldNotBeNull();
    }

    /// <summary>How a text that must be readable was read.</summary>
    public static string ShapeOf(string text, TestMachine? machine = null)
    {
        machine ??= new TestMachine();
        return new Shape(machine).Of(Sound(text, machine));
    }

    /// <summary>Asserts the one problem of a text, at the marked place.</summary>
    public static void ShouldFail(string marked, string code, string message, TestMachine? machine = null)
    {
        var parsed = From(marked, machine);
        parsed.Condition.ShouldBeNull();
        var problem = parsed.Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe(code);
        problem.Message.ShouldBe(message);
        (problem.Place with { Member = null }).ShouldBe(Marked.Parse(marked).Place);
    }
}
