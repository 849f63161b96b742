using DiagRules.Model.Conditions;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tests.Conditions;

/// <summary>Units are checked when a pack is loaded, from the inside of a term outwards.</summary>
public sealed class UnitCheckTests
{
    [Theory]
    [InlineData("fuse-feed > [|20 A|]", "DR3102", "'fuse-feed' is a voltage (V) and '20 A' is a current (A); compare it with a voltage.")]
    [InlineData("fuse-feed + [|20 A|] > 3 V", "DR3102", "'fuse-feed' is a voltage (V) and '20 A' is a current (A); add a voltage.")]
    [InlineData("fuse-feed - [|2 ohm|] > 3 V", "DR3102", "'fuse-feed' is a voltage (V) and '2 ohm' is a resistance (ohm); take off a voltage.")]
    [InlineData("fuse-feed * pump-current > [|3 V|]", "DR3102", "'fuse-feed * pump-current' is a power (W) and '3 V' is a voltage (V); compare it with a power.")]
    [InlineData("3 N * 2 m > [|3 N.m|]", "DR3102", "'3 N * 2 m' is an energy (J) and '3 N.m' is a torque (N.m); torque is not energy, and turns are not cycles: they differ by an angle ('1 rad').")]
    [InlineData("fuse-feed * 1 m > [|3 V|]", "DR3102", "'fuse-feed * 1 m' is a quantity (V.m) and '3 V' is a voltage (V); compare it with a quantity in V.m.")]
    [InlineData("11 V < fuse-feed < [|20 A|]", "DR3102", "'fuse-feed' is a voltage (V) and '20 A' is a current (A); compare it with a voltage.")]
    [InlineData("fuse-feed > [|12|]", "DR3103", "'12' is a number without a unit and 'fuse-feed' is a voltage (V); write the unit, such as '12 V'.")]
    [InlineData("[|0.5|] + fuse-feed > 1 V", "DR3103", "'0.5' is a number without a unit and 'fuse-feed' is a voltage (V); write the unit, such as '0.5 V'.")]
    [InlineData("fuse-feed > [|strokes|]", "DR3103", "'strokes' is a bare number and 'fuse-feed' is a voltage (V); a quantity such as '5 V' is expected.")]
    [InlineData("fuse-feed > [|0|]", "DR3103", "'0' is a number without a unit and 'fuse-feed' is a voltage (V); write the unit, such as '0 V'.")]
    public void What_does_not_fit_shows_both_sides_with_unit_and_kind(string marked, string code, string message) => Parsed.ShouldFail(marked, code, message);

    [Theory]
    [InlineData(
        "[|oil-temperature > 10 K|]",
        "'oil-temperature' is a temperature (degC) and '10 K' is a temperature difference (K); compare a temperature with one in degC, or the difference of two temperatures with one in K.")]
    [InlineData(
        "[|oil-temperature + air-temperature|] > 10 degC",
        "'oil-temperature + air-temperature' would add two temperatures, which depends on where the scale has its zero; add a difference in K, or use 'mean' for the middle of both.")]
    [InlineData("[|10 K - oil-temperature|] > 10 degC", "'10 K - oil-temperature' would take a temperature off a difference; write the temperature first.")]
    [InlineData(
        "[|2 * oil-temperature|] > 10 degC",
        "'2 * oil-temperature' would multiply with the temperature 'oil-temperature', which depends on where the scale has its zero; take a difference of two temperatures first.")]
    [InlineData(
        "[|-oil-temperature|] > 10 degC",
        "'-oil-temperature' would be the opposite of a temperature (degC), which depends on where the scale has its zero; take a difference of two temperatures first.")]
    [InlineData(
        "[|abs(oil-temperature)|] > 10 degC",
        "'abs(oil-temperature)' would take the sign off a temperature, which depends on where the scale has its zero; take a difference of two temperatures first.")]
    [InlineData("[|min(oil-temperature, 10 K)|] > 10 degC", "'min(oil-temperature, 10 K)' takes temperatures (degC) or temperature differences (K), not both.")]
    public void Temperatures_are_not_taken_for_differences(string marked, string message) => Parsed.ShouldFail(marked, "DR3105", message);

    [Theory]
    [InlineData("oil-temperature - air-temperature", "K")]
    [InlineData("oil-temperature + 10 K", "degC")]
    [InlineData("10 K + oil-temperature", "degC")]
    [InlineData("oil-temperature - 10 K", "degC")]
    [InlineData("mean(oil-temperature, air-temperature)", "degC")]
    [InlineData("max(oil-temperature, -5 degC)", "degC")]
    [InlineData("(oil-temperature - air-temperature) * 2", "K")]
    [InlineData("fuse-feed / pump-current", "ohm")]
    [InlineData("fuse-feed / motor-resistance", "A")]
    [InlineData("fuse-feed * pump-current", "W")]
    [InlineData("fuse-feed / fuse-load", "number")]
    [InlineData("2 * fuse-feed", "V")]
    [InlineData("fuse-feed * 5 %", "V")]
    [InlineData("5 L / 2 s", "L/s")]
    [InlineData("1 / 5 s", "Hz")]
    [InlineData("fuse-feed * 2 m / 1 s", "V.m/s")]
    [InlineData("5 % + charge", "%")]
    [InlineData("5 % + 1", "number")]
    [InlineData("line-pressure", "bar")]
    [InlineData("locked-rotor-current(fuse-feed, motor-resistance)", "A")]
    public void A_result_is_shown_in_a_unit_of_its_dimension(string text, string unit)
    {
        var problems = new ProblemSink();

        var term = new ConditionParser(new TestMachine(), problems).ReadTerm(Marked.Parse(text).Placed).ShouldNotBeNull();

        problems.InOrder().ShouldBeEmpty();
        term.Type.Unit.ShouldBe(unit);
        TestMachine.UnitOf(unit).Dimension.ShouldBe(term.Type.Dimension);
    }

    [Theory]
    [InlineData("line-pressure > 2600 psi")]
    [InlineData("line-pressure > 17 MPa")]
    [InlineData("motor-resistance < 0.05 ohm")]
    [InlineData("fuse-feed * 2 A > 3 kW")]
    [InlineData("flow > 1 L/min")]
    [InlineData("flow > 1 m3 / 1 h")]
    [InlineData("fuse-feed * pump-current * 5 s < 3 kWh")]
    [InlineData("charge > 0.5")]
    public void Units_of_one_dimension_may_be_mixed(string text) => Parsed.Sound(text);

    [Theory]
    [InlineData("0.3 V", null)]
    [InlineData("low-volts", null)]
    [InlineData("0.3", "DR3103: '0.3' has no unit; a voltage (V) is expected, such as '5 V'.")]
    [InlineData("fuse-rating", "DR3102: 'fuse-rating' is a current (A), and a voltage (V) is expected, such as '5 V'.")]
    public void A_term_can_be_asked_to_measure_something(string text, string? problem)
    {
        var problems = new ProblemSink();
        var expected = TermType.Of(TestMachine.UnitOf("V"));

        var term = new ConditionParser(new TestMachine(), problems).ReadTerm(Marked.Parse(text).Placed, expected);

        (term is null).ShouldBe(problem is not null);
        problems.InOrder().Select(found => $"{found.Code}: {found.Message}").ShouldBe(problem is null ? [] : [problem]);
    }

    [Fact]
    public void A_power_that_no_quantity_has_is_refused()
    {
        var text = string.Join(" * ", Enumerable.Repeat("2 m", 130));

        var problem = Parsed.From($"{text} > 3 m").Problems.ShouldHaveSingleItem();

        problem.Code.ShouldBe("DR3102");
        problem.Message.ShouldEndWith("their product has a power above 20, which no quantity has.");
    }
}
