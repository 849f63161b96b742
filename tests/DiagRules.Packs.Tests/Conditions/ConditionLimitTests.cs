using DiagRules.Model.Conditions;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tests.Conditions;

/// <summary>Conditions of packs that nobody knows: they may be long, deep, or short and stand for very much.</summary>
public sealed class ConditionLimitTests
{
    [Fact]
    public void Four_thousand_characters_are_read_and_one_more_is_not()
    {
        var longest = "known flow" + new string(' ', 3_990);

        Parsed.From(longest).Problems.ShouldBeEmpty();
        var problem = Parsed.From(longest + " ").Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe("DR7001");
        problem.Message.ShouldBe("The condition has 4001 characters, and 4000 are allowed; split it into findings of its own (setting 'ConditionLength').");
    }

    [Theory]
    [InlineData("(", "known flow", ")")]
    [InlineData("not ", "known flow", "")]
    [InlineData("any $lone (", "known flow", ")")]
    [InlineData("abs(", "strokes", ") > 3")]
    [InlineData("-", "strokes", " > 3")]
    [InlineData("(", "strokes", ") > 3")]
    public void Sixty_four_deep_is_read_and_one_more_is_not(string open, string inner, string close)
    {
        var bracket = close.StartsWith(')') ? ")" : "";
        var tail = close.Length > bracket.Length ? close[bracket.Length..] : "";

        Nested(64).Problems.ShouldBeEmpty();
        var problem = Nested(65).Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe("DR7001");
        problem.Message.ShouldBe("The condition is nested more than 64 deep; split it into findings of its own (setting 'ConditionDepth').");

        Parsed Nested(int depth) =>
            Parsed.From(string.Concat(Enumerable.Repeat(open, depth)) + inner + string.Concat(Enumerable.Repeat(bracket, depth)) + tail);
    }

    [Fact]
    public void A_short_text_that_multiplies_over_sets_is_refused()
    {
        var opened = string.Concat(Enumerable.Repeat("any $side (", 20));

        var problem = Parsed.From(opened + "known flow" + new string(')', 20)).Problems.ShouldHaveSingleItem();

        problem.Code.ShouldBe("DR7001");
        problem.Message.ShouldBe("Written out for all members the condition has more than 4096 parts; split it into findings of its own (setting 'ConditionSize').");
    }

    [Fact]
    public void Readings_that_double_with_every_step_are_refused_before_they_cost_anything()
    {
        var machine = new TestMachine();
        var doubled = machine.Get<Model.Reading>("fuse-feed");
        for (var i = 0; i < 10; i++)
        {
            doubled = machine.Derived($"doubled-{i}", "V", new ArithmeticTerm('+', TestMachine.Term(doubled), TestMachine.Term(doubled), TermType.Of(doubled.Unit), default));
        }

        Parsed.From("doubled-9 > 3 V", machine).Problems.ShouldBeEmpty();
        var problem = Parsed.From("doubled-9 + doubled-9 > 3 V", machine).Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe("DR7001");
        problem.Message.ShouldBe("With all that its readings derive from, 'doubled-9 + doubled-9' has more than 4096 operations; measure something in between (setting 'ConditionSize').");
    }

    [Fact]
    public void A_long_chain_of_derived_readings_is_refused_before_it_runs_out_of_stack()
    {
        var machine = new TestMachine();
        var last = machine.Get<Model.Reading>("fuse-feed");
        for (var i = 0; i < 510; i++)
        {
            last = machine.Derived($"copy-{i}", "V", TestMachine.Term(last));
        }

        Parsed.From("copy-509 > 3 V", machine).Problems.ShouldBeEmpty();
        Parsed.From("-copy-509 > 3 V", machine).Problems.ShouldBeEmpty();
        Parsed.From("-(-copy-509) > 3 V", machine).Problems.ShouldHaveSingleItem().Message
            .ShouldBe("With all that its readings derive from, '-(-copy-509)' has more than 512 operations within each other; measure something in between (setting 'ConditionChain').");
    }

    [Fact]
    public void Limits_are_the_hosts_to_set()
    {
        Parsed.From("known flow", limits: new ConditionLimits(Length: 9)).Problems.ShouldHaveSingleItem().Code.ShouldBe("DR7001");
        Parsed.From("not not known flow", limits: new ConditionLimits(Depth: 1)).Problems.ShouldHaveSingleItem().Code.ShouldBe("DR7001");
        Parsed.From("known flow and known flow", limits: new ConditionLimits(Size: 2)).Problems.ShouldHaveSingleItem().Code.ShouldBe("DR7001");
    }

    [Fact]
    public void A_term_has_the_same_limits()
    {
        var problems = new ProblemSink();

        new ConditionParser(new TestMachine(), problems).ReadTerm(Marked.Parse(new string('-', 70) + "strokes").Placed).ShouldBeNull();

        problems.InOrder().ShouldHaveSingleItem().Code.ShouldBe("DR7001");
    }
}
