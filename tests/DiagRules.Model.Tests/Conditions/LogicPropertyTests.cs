using CsCheck;
using DiagRules.Model.Conditions;

namespace DiagRules.Model.Tests.Conditions;

/// <summary>Laws of strong Kleene logic, over random conditions and random states of knowledge.</summary>
public sealed class LogicPropertyTests
{
    private const int Readings = 3;
    private const int Nodes = 3;
    private const int Grades = 4;

    [Fact]
    public void De_Morgan_and_double_negation() => Gen.Select(Condition(3), Condition(3), States).Sample(
        (left, right, facts) =>
        {
            Terms.Not(Terms.And(left, right)).Evaluate(facts).ShouldBe(Terms.Or(Terms.Not(left), Terms.Not(right)).Evaluate(facts));
            Terms.Not(Terms.Or(left, right)).Evaluate(facts).ShouldBe(Terms.And(Terms.Not(left), Terms.Not(right)).Evaluate(facts));
            Terms.Not(Terms.Not(left)).Evaluate(facts).ShouldBe(left.Evaluate(facts));
        },
        iter: 5_000,
        threads: 1);

    [Fact]
    public void Order_and_brackets_do_not_matter() => Gen.Select(Condition(2), Condition(2), Condition(2), States).Sample(
        (a, b, c, facts) =>
        {
            Terms.And(a, b, c).Evaluate(facts).ShouldBe(Terms.And(c, Terms.And(b, a)).Evaluate(facts));
            Terms.Or(a, b, c).Evaluate(facts).ShouldBe(Terms.Or(c, Terms.Or(b, a)).Evaluate(facts));
            Terms.And(a, Terms.Or(b, c)).Evaluate(facts).ShouldBe(Terms.Or(Terms.And(a, b), Terms.And(a, c)).Evaluate(facts));
        },
        iter: 5_000,
        threads: 1);

    // Kleene 1952, section 64: the tables are regular - a t or f once there does not change when an u becomes t or f.
    [Fact]
    public void One_more_observation_never_turns_an_answer_round() => Gen.Select(Condition(4), States, Gen.Int[0, Readings + Nodes - 1], Value, OneGrade).Sample(
        (condition, facts, which, value, grade) =>
        {
            var before = condition.Evaluate(facts);

            var after = condition.Evaluate(Observe(facts, which, value, grade));

            (before == Truth.Unknown || after == before).ShouldBeTrue($"{before} became {after}");
        },
        iter: 10_000,
        threads: 1);

    [Fact]
    public void Every_state_has_one_of_three_answers() => Gen.Select(Condition(4), States).Sample(
        (condition, facts) => condition.Evaluate(facts).ShouldBeOneOf(Truth.False, Truth.Unknown, Truth.True),
        iter: 2_000,
        threads: 1);

    private static Gen<double> Value => Gen.OneOf(
        Gen.Double[-20, 20],
        Gen.OneOf(0, double.PositiveInfinity, double.NegativeInfinity, double.MaxValue, double.Epsilon));

    private static Gen<GradeSet> OneGrade => Gen.Int[0, Grades - 1].Select(GradeSet.Of);

    private static Gen<Facts> States => Gen.Select(
        Gen.Select(Gen.Bool, Value).Array[Readings],
        Gen.Double[0, 3].Array[Readings],
        Gen.Byte[0, (1 << Grades) - 1].Array[Nodes],
        (values, uncertainties, open) => new Facts
        {
            Values = Enumerable.Range(0, Readings).Where(i => values[i].Item1).ToDictionary(i => i, i => values[i].Item2),
            Uncertainties = Enumerable.Range(0, Readings).ToDictionary(i => i, i => uncertainties[i]),
            Open = Enumerable.Range(0, Nodes).ToDictionary(i => i, i => new GradeSet(open[i])),
        });

    /// <summary>What is unknown becomes known, and what is open is narrowed; what is settled stays.</summary>
    private static Facts Observe(Facts facts, int which, double value, GradeSet grade)
    {
        var values = new Dictionary<int, double>(facts.Values);
        var open = new Dictionary<int, GradeSet>(facts.Open);
        if (which < Readings)
        {
            values.TryAdd(which, value);
        }
        else if (open[which - Readings] is var before && (before.IsEmpty || before.Overlaps(grade)))
        {
            open[which - Readings] = grade;
        }

        return new Facts { Values = values, Open = open, Uncertainties = facts.Uncertainties };
    }

    private static Gen<Condition> Condition(int depth)
    {
        var leaf = Gen.OneOf(GradeTest, Comparison);
        if (depth == 0)
        {
            return leaf;
        }

        var inner = Condition(depth - 1);
        return Gen.Frequency(
            (2, leaf),
            (1, inner.Select(part => (Condition)Terms.Not(part))),
            (1, inner.Array[2, 3].Select(parts => (Condition)Terms.And(parts))),
            (1, inner.Array[2, 3].Select(parts => (Condition)Terms.Or(parts))));
    }

    private static Gen<Condition> GradeTest => Gen.Select(
        Gen.Int[0, Nodes - 1],
        Gen.Byte[0, (1 << Grades) - 1],
        (node, grades) => (Condition)Terms.Is(node, new GradeSet(grades)));

    private static Gen<Condition> Comparison => Gen.Select(
        Term(2),
        Gen.OneOf(Comparator.Less, Comparator.LessOrEqual, Comparator.Greater, Comparator.GreaterOrEqual),
        Term(2),
        (left, comparator, right) => (Condition)Terms.Compare(left, comparator, right));

    private static Gen<Term> Term(int depth)
    {
        var leaf = Gen.OneOf(
            Gen.Int[0, Readings - 1].Select(reading => (Term)Terms.Of(reading)),
            Gen.Int[-5, 5].Select(value => (Term)Terms.Number(value)));
        if (depth == 0)
        {
            return leaf;
        }

        var inner = Term(depth - 1);
        return Gen.Frequency(
            (2, leaf),
            (2, Gen.Select(inner, Gen.OneOf('+', '-', '*', '/'), inner, (left, sign, right) => (Term)Terms.Do(left, sign, right))),
            (1, inner.Select(part => (Term)Terms.Call(v => Math.Sqrt(v[0]), part))));
    }
}
