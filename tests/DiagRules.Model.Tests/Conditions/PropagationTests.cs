using DiagRules.Model.Conditions;

namespace DiagRules.Model.Tests.Conditions;

/// <summary>
/// First-order propagation of uncertainty (JCGM 100:2008, 5.1.2) against sampling (the method of JCGM 101:2008), and against the guide's
/// own examples.
/// </summary>
public sealed class PropagationTests
{
    private const int Readings = 4;
    private const int Derived = Readings;
    private const int Samples = 10_000;

    /// <summary>JCGM 100:2008, 4.3.7 and 5.1.5 (numbers from memory): limits of 14e-6 of 0.928571 V and 2e-6 of 1 V, with a scatter of 12 uV.</summary>
    [Fact]
    public void Voltmeter_of_the_guide()
    {
        var meter = new Accuracy(14e-6, 2e-6);
        var type = meter.StandardUncertainty(0.928571);
        var facts = new Facts { Values = { [0] = 0.928571, [1] = 0 }, Uncertainties = { [0] = type, [1] = 12e-6 } };

        (type * Math.Sqrt(3)).ShouldBe(15e-6, 0.3e-6);
        type.ShouldBe(8.7e-6, 0.3e-6);
        Spread(Terms.Do(Terms.Of(0), '+', Terms.Of(1)), facts).ShouldBe(15e-6, 0.3e-6);
    }

    /// <summary>
    /// JCGM 100:2008, example H.2 (numbers from memory): resistance, reactance and impedance from volts, amperes and phase that are correlated,
    /// r(V, I) = -0.36, r(V, phi) = 0.86, r(I, phi) = -0.65. Here the three derive from independent readings of uncertainty 1 by the
    /// Cholesky factor of that matrix, so that what is tested is the correlation through common readings.
    /// </summary>
    [Theory]
    [InlineData('R', 127.732, 0.071)]
    [InlineData('X', 219.847, 0.295)]
    [InlineData('Z', 254.26, 0.236)]
    public void Correlated_inputs_of_the_guide(char result, double value, double uncertainty)
    {
        const double L21 = -0.36, L31 = 0.86;
        var l22 = Math.Sqrt(1 - (L21 * L21));
        var l32 = (-0.65 - (L31 * L21)) / l22;
        var l33 = Math.Sqrt(1 - (L31 * L31) - (l32 * l32));
        var volts = Sum(4.9990, (0.0032, 0));
        var amperes = Sum(0.0196610, (9.5e-6 * L21, 0), (9.5e-6 * l22, 1));
        var phase = Sum(1.04446, (0.00075 * L31, 0), (0.00075 * l32, 1), (0.00075 * l33, 2));
        var impedance = Terms.Do(volts, '/', amperes);
        Term term = result switch
        {
            'R' => Terms.Do(impedance, '*', Terms.Call(x => Math.Cos(x[0]), phase)),
            'X' => Terms.Do(impedance, '*', Terms.Call(x => Math.Sin(x[0]), phase)),
            _ => impedance,
        };
        var facts = new Facts { Values = { [0] = 0, [1] = 0, [2] = 0 }, Uncertainties = { [0] = 1, [1] = 1, [2] = 1 } };

        term.Evaluate(facts).Value.ShouldBe(value, 0.0015);
        Spread(term, facts).ShouldBe(uncertainty, 0.0015);
    }

    public static IEnumerable<TheoryDataRow<int>> Seeds => Enumerable.Range(1, 60).Select(seed => new TheoryDataRow<int>(seed));

    /// <summary>Random expressions of four readings and one derived from them, each reading accurate to half a percent.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Random_expressions_agree_with_sampling(int seed)
    {
        var random = new Random(seed);
        var facts = new Facts();
        for (var i = 0; i < Readings; i++)
        {
            facts.Values[i] = 2 + (7 * random.NextDouble());
            facts.Uncertainties[i] = 0.005 * facts.Values[i] * random.NextDouble();
        }

        var from = Terms.Do(Leaf(random, null), random.Next(2) == 0 ? '*' : '+', Leaf(random, null));
        var derived = Terms.Derived(Derived, from);
        facts.Values[Derived] = from.Evaluate(facts).Value;
        var (left, right) = (Make(random, derived, 3), Make(random, derived, 2));
        var comparison = Terms.Compare(left, Comparator.Greater, right);

        var spread = comparison.Spread(facts);
        var sampled = Sampled(comparison, from, facts, random);

        // 10 000 samples are good to 0.7 %. Where both sides nearly cancel, curvature counts against each of them.
        spread.ShouldBe(sampled, (0.03 * sampled) + (0.003 * (Spread(left, facts) + Spread(right, facts))));
        spread.ShouldBeGreaterThan(0);
    }

    private static double Sampled(Comparison comparison, Term from, Facts facts, Random random)
    {
        var moved = new Facts();
        double mean = 0, squares = 0;
        for (var n = 1; n <= Samples; n++)
        {
            for (var i = 0; i < Readings; i++)
            {
                moved.Values[i] = facts.Values[i] + (facts.Uncertainties[i] * Normal(random));
            }

            moved.Values[Derived] = from.Evaluate(moved).Value;
            var difference = comparison.Left.Evaluate(moved).Value - comparison.Right.Evaluate(moved).Value;
            var step = difference - mean;
            mean += step / n;
            squares += step * (difference - mean);
        }

        return Math.Sqrt(squares / (Samples - 1));
    }

    /// <summary>A positive expression, so that nothing is divided by next to nothing.</summary>
    private static Term Make(Random random, Reading derived, int depth) => depth == 0 ? Leaf(random, derived) : random.Next(7) switch
    {
        0 or 1 => Terms.Do(Make(random, derived, depth - 1), '+', Make(random, derived, depth - 1)),
        2 => Terms.Do(Make(random, derived, depth - 1), '*', Make(random, derived, depth - 1)),
        3 => Terms.Do(Make(random, derived, depth - 1), '/', Make(random, derived, depth - 1)),
        4 => Terms.Call(x => Math.Sqrt(x[0]), Make(random, derived, depth - 1)),
        5 => Terms.Call(x => x[0] * x[1] / (x[0] + x[1]), Make(random, derived, depth - 1), Make(random, derived, depth - 1)),
        _ => Terms.Negate(Terms.Negate(Make(random, derived, depth - 1))),
    };

    private static ReadingTerm Leaf(Random random, Reading? derived) =>
        random.Next(derived is null ? Readings : Readings + 1) is var reading && reading == Derived ? Terms.Of(derived!) : Terms.Of(reading);

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static Term Sum(double constant, params ReadOnlySpan<(double Factor, int Reading)> parts)
    {
        Term sum = Terms.Number(constant);
        foreach (var (factor, reading) in parts)
        {
            sum = Terms.Do(sum, '+', Terms.Do(Terms.Number(factor), '*', Terms.Of(reading)));
        }

        return sum;
    }

    private static double Spread(Term term, Facts facts) => Terms.Compare(term, Comparator.Greater, Terms.Number(0)).Spread(facts);
}
