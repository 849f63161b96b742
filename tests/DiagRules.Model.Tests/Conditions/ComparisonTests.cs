using DiagRules.Model.Conditions;
using static DiagRules.Model.Conditions.Comparator;
using static DiagRules.Model.Conditions.Truth;

namespace DiagRules.Model.Tests.Conditions;

/// <summary>
/// When a comparison of inaccurate readings is certain: outside k = 2 standard uncertainties, carried to first order (JCGM 100:2008,
/// Evaluation of measurement data - Guide to the expression of uncertainty in measurement, 5.1.2 and 6.2).
/// </summary>
public sealed class ComparisonTests
{
    [Theory]
    [InlineData(Less, 4.9, 5, True)]
    [InlineData(Less, 5, 5, False)]
    [InlineData(LessOrEqual, 5, 5, True)]
    [InlineData(LessOrEqual, 5.1, 5, False)]
    [InlineData(Greater, 5.1, 5, True)]
    [InlineData(Greater, 5, 5, False)]
    [InlineData(GreaterOrEqual, 5, 5, True)]
    [InlineData(GreaterOrEqual, 4.9, 5, False)]
    [InlineData(Equal, 5, 5, True)]
    [InlineData(Equal, 5.1, 5, False)]
    [InlineData(NotEqual, 5.1, 5, True)]
    [InlineData(NotEqual, 5, 5, False)]
    [InlineData(Less, double.NaN, 5, Unknown)]
    [InlineData(NotEqual, double.NaN, 5, Unknown)]
    [InlineData(Greater, double.PositiveInfinity, 5, True)]
    [InlineData(LessOrEqual, double.PositiveInfinity, 5, False)]
    [InlineData(Less, double.NegativeInfinity, 5, True)]
    [InlineData(GreaterOrEqual, double.NegativeInfinity, 5, False)]
    public void Sharp_numbers(Comparator comparator, double value, double limit, Truth result)
    {
        var facts = new Facts { Values = { [0] = value } };

        Terms.Compare(Terms.Of(0), comparator, Terms.Number(limit)).Evaluate(facts).ShouldBe(result);
    }

    // u = 0.1, so k u = 0.2: 5.2 is too close to 5, 5.21 is not.
    [Theory]
    [InlineData(5.21, True)]
    [InlineData(5.19, Unknown)]
    [InlineData(5.0, Unknown)]
    [InlineData(4.81, Unknown)]
    [InlineData(4.79, False)]
    public void A_comparison_is_certain_outside_two_standard_uncertainties(double value, Truth result)
    {
        var facts = new Facts { Values = { [0] = value }, Uncertainties = { [0] = 0.1 } };

        Terms.Compare(Terms.Of(0), Greater, Terms.Number(5)).Evaluate(facts).ShouldBe(result);
        Terms.Compare(Terms.Number(5), Less, Terms.Of(0)).Evaluate(facts).ShouldBe(result);
    }

    // Two readings 12.63 V and 12.21 V of one meter good to 0.5 % + 0.02 V, rectangular limits (JCGM 100:2008, 4.3.7):
    // u1 = (0.06315 + 0.02) / sqrt 3 = 0.04801, u2 = (0.06105 + 0.02) / sqrt 3 = 0.04679, u = sqrt(u1^2 + u2^2) = 0.06704.
    // The drop is 0.42 V, and 2 u is 0.134 V: above 0.28 V it is certain, against 0.30 V it is too close to call.
    [Theory]
    [InlineData(0.28, True)]
    [InlineData(0.30, Unknown)]
    [InlineData(0.42, Unknown)]
    [InlineData(0.55, Unknown)]
    [InlineData(0.56, False)]
    public void The_difference_of_two_readings_is_less_accurate_than_either(double limit, Truth result)
    {
        var accuracy = new Accuracy(0.005, 0.02);
        var facts = new Facts
        {
            Values = { [0] = 12.63, [1] = 12.21, [2] = 0.42 },
            Uncertainties = { [0] = accuracy.StandardUncertainty(12.63), [1] = accuracy.StandardUncertainty(12.21) },
        };
        var drop = Terms.Derived(2, Terms.Do(Terms.Of(0), '-', Terms.Of(1)));
        var comparison = Terms.Compare(Terms.Of(drop), Greater, Terms.Number(limit));

        comparison.Spread(facts).ShouldBe(0.06704, 0.00001);
        comparison.Evaluate(facts).ShouldBe(result);
        comparison.Bases.ShouldBe([0, 1]);
    }

    // JCGM 100:2008, 5.1.6, equation (12): relative variances of factors and divisors add up. The inputs are V and I of its
    // example H.2 (4.9990 V, u 0.0032 V; 19.6610 mA, u 0.0095 mA; from memory), taken as independent here:
    // Z = 254.26 ohm, u / Z = sqrt(0.00064013^2 + 0.00048319^2) = 0.00080202, u = 0.20392 ohm.
    [Fact]
    public void Relative_variances_of_a_quotient_add_up()
    {
        var facts = new Facts { Values = { [0] = 4.9990, [1] = 0.0196610 }, Uncertainties = { [0] = 0.0032, [1] = 0.0000095 } };
        var impedance = Terms.Do(Terms.Of(0), '/', Terms.Of(1));

        impedance.Evaluate(facts).Value.ShouldBe(254.26, 0.005);
        Terms.Compare(impedance, Less, Terms.Number(0)).Spread(facts).ShouldBe(0.20392, 0.00005);
    }

    [Fact]
    public void A_reading_minus_itself_is_zero_however_inaccurate()
    {
        var facts = new Facts { Values = { [0] = 12 }, Uncertainties = { [0] = 5 } };
        var zero = Terms.Do(Terms.Of(0), '-', Terms.Of(0));

        Terms.Compare(zero, Less, Terms.Number(0.001)).Evaluate(facts).ShouldBe(True);
        Terms.Compare(Terms.Of(0), GreaterOrEqual, Terms.Of(0)).Evaluate(facts).ShouldBe(True);
        Terms.Compare(Terms.Do(Terms.Of(0), '+', Terms.Negate(Terms.Of(0))), Greater, Terms.Number(0.001)).Evaluate(facts).ShouldBe(False);
    }

    [Fact]
    public void What_cancels_through_a_derived_reading_cancels()
    {
        var facts = new Facts { Values = { [0] = 12, [1] = 9, [2] = 3 }, Uncertainties = { [0] = 5, [1] = 5 } };
        var drop = Terms.Of(Terms.Derived(2, Terms.Do(Terms.Of(0), '-', Terms.Of(1))));

        // feed against load + (feed - load)
        Terms.Compare(Terms.Of(0), LessOrEqual, Terms.Do(Terms.Of(1), '+', drop)).Evaluate(facts).ShouldBe(True);
    }

    [Fact]
    public void A_ratio_of_one_reading_to_itself_is_sharp_too()
    {
        var facts = new Facts { Values = { [0] = 12 }, Uncertainties = { [0] = 5 } };

        Terms.Compare(Terms.Do(Terms.Of(0), '/', Terms.Of(0)), GreaterOrEqual, Terms.Number(1)).Evaluate(facts).ShouldBe(True);
    }

    [Theory]
    [InlineData(11.5, True)]
    [InlineData(10.9, Unknown)]
    [InlineData(13.9, Unknown)]
    [InlineData(10.7, False)]
    [InlineData(14.3, False)]
    public void A_chain_is_two_comparisons(double value, Truth result)
    {
        var facts = new Facts { Values = { [0] = value }, Uncertainties = { [0] = 0.1 } };

        Terms.And(Terms.Compare(Terms.Number(11), LessOrEqual, Terms.Of(0)), Terms.Compare(Terms.Of(0), Less, Terms.Number(14)))
            .Evaluate(facts).ShouldBe(result);
    }

    [Fact]
    public void Beyond_the_meters_range_is_beyond_every_limit_but_not_beyond_another_such_reading()
    {
        var facts = new Facts { Values = { [0] = double.PositiveInfinity, [1] = double.PositiveInfinity, [2] = double.NegativeInfinity }, Uncertainties = { [0] = 1 } };

        Terms.Compare(Terms.Of(0), Greater, Terms.Number(1e300)).Evaluate(facts).ShouldBe(True);
        Terms.Compare(Terms.Of(0), Greater, Terms.Of(1)).Evaluate(facts).ShouldBe(Unknown);
        Terms.Compare(Terms.Of(0), Greater, Terms.Of(2)).Evaluate(facts).ShouldBe(Unknown);
    }

    [Fact]
    public void No_arithmetic_is_done_beyond_the_meters_range()
    {
        var facts = new Facts { Values = { [0] = double.PositiveInfinity, [1] = 3 } };

        Terms.Compare(Terms.Do(Terms.Of(0), '+', Terms.Number(1)), Greater, Terms.Number(5)).Evaluate(facts).ShouldBe(Unknown);
        Terms.Compare(Terms.Do(Terms.Of(1), '/', Terms.Of(0)), Less, Terms.Number(5)).Evaluate(facts).ShouldBe(Unknown);
        Terms.Compare(Terms.Negate(Terms.Of(0)), Less, Terms.Number(5)).Evaluate(facts).ShouldBe(Unknown);
        Terms.Compare(Terms.Call(x => 1, Terms.Of(0)), Less, Terms.Number(5)).Evaluate(facts).ShouldBe(Unknown);
    }

    [Fact]
    public void A_division_by_zero_is_unknown()
    {
        var facts = new Facts { Values = { [0] = 3, [1] = 0 } };

        Terms.Compare(Terms.Do(Terms.Of(0), '/', Terms.Of(1)), Greater, Terms.Number(5)).Evaluate(facts).ShouldBe(Unknown);
    }

    [Fact]
    public void A_spread_that_does_not_compute_leaves_the_answer_open()
    {
        var facts = new Facts { Values = { [0] = 0 }, Uncertainties = { [0] = 0.1 } };
        var steep = Terms.Do(Terms.Do(Terms.Of(0), '*', Terms.Number(1e308)), '*', Terms.Number(10));

        Terms.Compare(Terms.Do(steep, '-', steep), Less, Terms.Number(1)).Evaluate(facts).ShouldBe(Unknown);
    }

    [Fact]
    public void Parameters_are_sharp()
    {
        var facts = new Facts { Values = { [0] = 3 }, Parameters = { [0] = 3 } };

        Terms.Compare(Terms.Of(0), GreaterOrEqual, Terms.Parameter(0)).Evaluate(facts).ShouldBe(True);
    }

    [Fact]
    public void Evaluation_allocates_nothing()
    {
        var facts = new Facts { Values = { [0] = 12, [1] = 9 }, Uncertainties = { [0] = 0.1, [1] = 0.1 }, Open = { [0] = GradeSet.Of(1) } };
        var condition = Terms.And(
            Terms.Or(Terms.Is(0, GradeSet.Of(0)), Terms.Compare(Terms.Do(Terms.Of(0), '-', Terms.Of(1)), Greater, Terms.Number(1))),
            Terms.Not(Terms.Is(0, GradeSet.Of(0))));
        condition.Evaluate(facts).ShouldBe(True);

        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1_000; i++)
        {
            condition.Evaluate(facts);
        }

        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBe(0);
    }
}
