using CsCheck;
using DiagRules.Model.Conditions;

namespace DiagRules.Model.Tests.Conditions;

/// <summary>Slopes of terms against derivatives worked out by hand.</summary>
public sealed class SlopeTests
{
    // Magnitudes in SI that workshops meet: ohms of a cable, volts, pascals, cubic metres a second.
    public static TheoryData<double> Magnitudes => [1e-3, 12.6, 1.8e7, 5e-7, -40];

    [Theory]
    [MemberData(nameof(Magnitudes))]
    public void Calculations_of_one_argument(double x)
    {
        ShouldRise(v => 3 * v[0], 3, x);
        ShouldRise(v => v[0] * v[0], 2 * x, x);
        ShouldRise(v => v[0] * v[0] * v[0], 3 * x * x, x);
        ShouldRise(v => 1 / v[0], -1 / (x * x), x);
        ShouldRise(v => Math.Sqrt(Math.Abs(v[0])), Math.Sign(x) / (2 * Math.Sqrt(Math.Abs(x))), x);
        ShouldRise(v => Math.Log(Math.Abs(v[0])), 1 / x, x);
        ShouldRise(v => Math.Abs(v[0]), Math.Sign(x), x);
    }

    // JCGM 100:2008, 5.1.3, example: P = V^2 / (R0 (1 + a (t - t0))); the guide writes its partial derivatives out.
    [Fact]
    public void Power_of_a_resistor_as_in_the_example_of_the_guide()
    {
        const double V = 12.0, R0 = 0.8, A = 0.00393, T = 60.0, T0 = 20.0;
        var facts = new Facts { Values = { [0] = V, [1] = R0, [2] = A, [3] = T } };
        var hot = 1 + (A * (T - T0));
        double[] derivatives =
        [
            2 * V / (R0 * hot),
            -V * V / (R0 * R0 * hot),
            -V * V * (T - T0) / (R0 * hot * hot),
            -V * V * A / (R0 * hot * hot),
        ];
        var called = Terms.Call(v => v[0] * v[0] / (v[1] * (1 + (v[2] * (v[3] - T0)))), Terms.Of(0), Terms.Of(1), Terms.Of(2), Terms.Of(3));
        var factor = Terms.Do(Terms.Number(1), '+', Terms.Do(Terms.Of(2), '*', Terms.Do(Terms.Of(3), '-', Terms.Number(T0))));
        var written = Terms.Do(Terms.Do(Terms.Of(0), '*', Terms.Of(0)), '/', Terms.Do(Terms.Of(1), '*', factor));

        for (var reading = 0; reading < derivatives.Length; reading++)
        {
            written.Evaluate(facts, reading).Rate.ShouldBe(derivatives[reading], Math.Abs(derivatives[reading]) * 1e-14);
            called.Evaluate(facts, reading).Rate.ShouldBe(derivatives[reading], Math.Abs(derivatives[reading]) * 1e-8);
        }
    }

    [Fact]
    public void The_slope_of_an_argument_goes_through_the_calculation()
    {
        var facts = new Facts { Values = { [0] = 3, [1] = 5 } };

        // d/dx sin(x^2 y) = 2 x y cos(x^2 y)
        var term = Terms.Call(v => Math.Sin(v[0]), Terms.Do(Terms.Do(Terms.Of(0), '*', Terms.Of(0)), '*', Terms.Of(1)));

        term.Evaluate(facts, 0).Rate.ShouldBe(30 * Math.Cos(45), 1e-6);
        term.Evaluate(facts, 1).Rate.ShouldBe(9 * Math.Cos(45), 1e-6);
        term.Evaluate(facts).Rate.ShouldBe(0);
    }

    [Fact]
    public void A_reading_that_is_two_arguments_counts_twice()
    {
        var facts = new Facts { Values = { [0] = 3 } };

        Terms.Call(v => v[0] * v[1], Terms.Of(0), Terms.Of(0)).Evaluate(facts, 0).Rate.ShouldBe(6, 1e-7);
    }

    [Fact]
    public void At_the_edge_of_the_valid_range_one_side_is_enough()
    {
        var facts = new Facts { Values = { [0] = 2 } };

        Terms.Call(v => v[0] > 2 ? double.NaN : 3 * v[0], Terms.Of(0)).Evaluate(facts, 0).Rate.ShouldBe(3, 1e-7);
        Terms.Call(v => v[0] < 2 ? double.NaN : 3 * v[0], Terms.Of(0)).Evaluate(facts, 0).Rate.ShouldBe(3, 1e-7);
    }

    [Fact]
    public void Where_a_curve_turns_round_an_inaccurate_reading_is_not_taken_for_a_sharp_one()
    {
        var facts = new Facts { Values = { [0] = 12, [1] = 12 }, Uncertainties = { [0] = 0.2, [1] = 0.2 } };
        var distance = Terms.Call(v => Math.Abs(v[0]), Terms.Do(Terms.Of(0), '-', Terms.Of(1)));

        Math.Abs(distance.Evaluate(facts, 0).Rate).ShouldBe(1, 1e-7);
        Terms.Compare(distance, Comparator.LessOrEqual, Terms.Number(0.1)).Evaluate(facts).ShouldBe(Truth.Unknown);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_calculation_without_an_answer_is_unknown(double answer) =>
        Terms.Call(_ => answer, Terms.Number(1)).Evaluate(Facts.None).ShouldBe(Slope.Unknown);

    [Fact]
    public void A_calculation_that_throws_is_unknown_and_harms_nothing() =>
        Terms.Call(_ => throw new InvalidOperationException(), Terms.Number(1)).Evaluate(Facts.None).ShouldBe(Slope.Unknown);

    [Fact]
    public void Size_and_depth_count_what_derived_readings_derive_from()
    {
        var sum = Terms.Do(Terms.Of(0), '+', Terms.Negate(Terms.Of(1)));
        var derived = Terms.Of(Terms.Derived(2, sum));
        var call = Terms.Call(v => v[0], derived, Terms.Number(1));

        (sum.Size, sum.Depth).ShouldBe((4, 3));
        (derived.Size, derived.Depth).ShouldBe((5, 4));
        (call.Size, call.Depth).ShouldBe((7, 5));
    }

    [Fact]
    public void Slopes_of_arithmetic_agree_with_differences() =>
        Gen.Select(Gen.Double[0.5, 20], Gen.Double[0.5, 20], Gen.OneOf('+', '-', '*', '/'), Gen.OneOf('+', '-', '*', '/')).Sample(
            (x, y, first, second) =>
            {
                var term = Terms.Do(Terms.Do(Terms.Of(0), first, Terms.Of(1)), second, Terms.Negate(Terms.Of(0)));
                var step = x * 1e-6;
                var difference = (At(x + step) - At(x - step)) / (2 * step);

                term.Evaluate(new Facts { Values = { [0] = x, [1] = y } }, 0).Rate.ShouldBe(difference, 1e-6 * (1 + Math.Abs(difference)));

                double At(double value) => term.Evaluate(new Facts { Values = { [0] = value, [1] = y } }).Value;
            },
            iter: 1_000,
            threads: 1);

    private static void ShouldRise(Func<double[], double> function, double derivative, double x)
    {
        var facts = new Facts { Values = { [0] = x } };

        Terms.Call(function, Terms.Of(0)).Evaluate(facts, 0).Rate.ShouldBe(derivative, Math.Abs(derivative) * 1e-8);
    }
}
