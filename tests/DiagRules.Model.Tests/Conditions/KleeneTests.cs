using DiagRules.Model.Conditions;
using static DiagRules.Model.Conditions.Truth;

namespace DiagRules.Model.Tests.Conditions;

/// <summary>
/// The strong three-valued tables of S. C. Kleene, Introduction to Metamathematics, North-Holland 1952, section 64 (from memory), rows
/// and columns in his order t, f, u.
/// </summary>
public sealed class KleeneTests
{
    [Theory]
    [InlineData(True, False)]
    [InlineData(False, True)]
    [InlineData(Unknown, Unknown)]
    public void Negation(Truth part, Truth result) => Terms.Not(Terms.Always(part)).Evaluate(Facts.None).ShouldBe(result);

    [Theory]
    [InlineData(True, True, True)]
    [InlineData(True, False, False)]
    [InlineData(True, Unknown, Unknown)]
    [InlineData(False, True, False)]
    [InlineData(False, False, False)]
    [InlineData(False, Unknown, False)]
    [InlineData(Unknown, True, Unknown)]
    [InlineData(Unknown, False, False)]
    [InlineData(Unknown, Unknown, Unknown)]
    public void Conjunction(Truth left, Truth right, Truth result) =>
        Terms.And(Terms.Always(left), Terms.Always(right)).Evaluate(Facts.None).ShouldBe(result);

    [Theory]
    [InlineData(True, True, True)]
    [InlineData(True, False, True)]
    [InlineData(True, Unknown, True)]
    [InlineData(False, True, True)]
    [InlineData(False, False, False)]
    [InlineData(False, Unknown, Unknown)]
    [InlineData(Unknown, True, True)]
    [InlineData(Unknown, False, Unknown)]
    [InlineData(Unknown, Unknown, Unknown)]
    public void Disjunction(Truth left, Truth right, Truth result) =>
        Terms.Or(Terms.Always(left), Terms.Always(right)).Evaluate(Facts.None).ShouldBe(result);

    [Theory]
    [InlineData(True, Unknown, False, False, True)]
    [InlineData(True, Unknown, True, Unknown, True)]
    [InlineData(False, Unknown, False, False, Unknown)]
    public void Three_parts_are_joined_as_two_and_one(Truth first, Truth second, Truth third, Truth all, Truth any)
    {
        Condition[] parts = [Terms.Always(first), Terms.Always(second), Terms.Always(third)];

        Terms.And(parts).Evaluate(Facts.None).ShouldBe(all);
        Terms.Or(parts).Evaluate(Facts.None).ShouldBe(any);
    }

    [Fact]
    public void Nothing_said_is_unknown() => default(Truth).ShouldBe(Unknown);
}
