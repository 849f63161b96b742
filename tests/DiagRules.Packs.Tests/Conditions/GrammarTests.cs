namespace DiagRules.Packs.Tests.Conditions;

/// <summary>How the language of conditions is read, line by line of its grammar.</summary>
public sealed class GrammarTests
{
    [Theory]
    [InlineData("pump-fuse is blown", "(is pump-fuse blown)")]
    [InlineData("pump-fuse is not blown", "(is pump-fuse whole)")]
    [InlineData("pump-sound is clicks-only or silent", "(is pump-sound clicks-only|silent)")]
    [InlineData("pump-sound is stalled or worse", "(is pump-sound stalled|clicks-only|silent)")]
    [InlineData("pump-sound is stalled or better", "(is pump-sound runs-freely|runs-slowly|stalled)")]
    [InlineData("pump-sound is not stalled or worse", "(is pump-sound runs-freely|runs-slowly)")]
    [InlineData("brushes-worn is present", "(is brushes-worn present)")]
    [InlineData("switch-off is absent", "(is switch-off absent)")]
    [InlineData("known pump-fuse", "(known pump-fuse)")]
    [InlineData("unknown brushes-worn", "(unknown brushes-worn)")]
    [InlineData("unknown fuse-feed", "(unknown fuse-feed)")]
    public void Tests_of_grades_and_of_what_is_known(string text, string shape) => Parsed.ShapeOf(text).ShouldBe(shape);

    [Theory]
    [InlineData("known fuse-feed or known fuse-load and known flow", "(or (known fuse-feed) (and (known fuse-load) (known flow)))")]
    [InlineData("not known fuse-feed and known flow", "(and (not (known fuse-feed)) (known flow))")]
    [InlineData("not (known fuse-feed and known flow)", "(not (and (known fuse-feed) (known flow)))")]
    [InlineData("(known fuse-feed or known fuse-load) and known flow", "(and (or (known fuse-feed) (known fuse-load)) (known flow))")]
    [InlineData("known fuse-feed and known fuse-load and known flow", "(and (known fuse-feed) (known fuse-load) (known flow))")]
    [InlineData("not not known flow", "(not (not (known flow)))")]
    [InlineData("((known flow))", "(known flow)")]
    public void Not_binds_tightest_then_and_then_or(string text, string shape) => Parsed.ShapeOf(text).ShouldBe(shape);

    [Theory]
    [InlineData("pump-sound is stalled or pump-fuse is blown", "(or (is pump-sound stalled) (is pump-fuse blown))")]
    [InlineData("pump-sound is stalled or silent or pump-fuse is blown", "(or (is pump-sound stalled|silent) (is pump-fuse blown))")]
    [InlineData("pump-sound is stalled or fuse-feed < 5 V", "(or (is pump-sound stalled) (< fuse-feed 5V))")]
    [InlineData("pump-sound is stalled or 5 V > fuse-feed", "(or (is pump-sound stalled) (> 5V fuse-feed))")]
    [InlineData("pump-sound is stalled or -fuse-feed < 5 V", "(or (is pump-sound stalled) (< (- fuse-feed) 5V))")]
    [InlineData("pump-sound is stalled or abs(fuse-feed) < 5 V", "(or (is pump-sound stalled) (< (abs fuse-feed) 5V))")]
    [InlineData("pump-sound is stalled or not pump-fuse is blown", "(or (is pump-sound stalled) (not (is pump-fuse blown)))")]
    [InlineData("pump-sound is stalled or unknown pump-fuse", "(or (is pump-sound stalled) (unknown pump-fuse))")]
    [InlineData("pump-sound is stalled or (known flow)", "(or (is pump-sound stalled) (known flow))")]
    [InlineData("pump-sound is stalled or worse or pump-fuse is blown", "(or (is pump-sound stalled|clicks-only|silent) (is pump-fuse blown))")]
    [InlineData("pump-sound is not stalled or pump-fuse is blown", "(or (is pump-sound runs-freely|runs-slowly|clicks-only|silent) (is pump-fuse blown))")]
    [InlineData("pump-sound is stalled or silent and pump-fuse is blown", "(and (is pump-sound stalled|silent) (is pump-fuse blown))")]
    public void After_is_or_takes_another_grade_unless_a_test_begins(string text, string shape) => Parsed.ShapeOf(text).ShouldBe(shape);

    [Theory]
    [InlineData("11 V <= fuse-feed < 14 V", "(and (<= 11V fuse-feed) (< fuse-feed 14V))")]
    [InlineData("14 V > fuse-feed >= 11 V", "(and (> 14V fuse-feed) (>= fuse-feed 11V))")]
    [InlineData("fuse-load < fuse-feed", "(< fuse-load fuse-feed)")]
    [InlineData("strokes = 3", "(= strokes 3)")]
    [InlineData("strokes != 2 * 3 - 1", "(!= strokes (- (* 2 3) 1))")]
    [InlineData("max(strokes, 2) = 3", "(= (max strokes 2) 3)")]
    [InlineData("fuse-feed<5 V", "(< fuse-feed 5V)")]
    public void Comparisons_and_chains(string text, string shape) => Parsed.ShapeOf(text).ShouldBe(shape);

    [Theory]
    [InlineData("fuse-feed - fuse-load - 1 V > 0 V", "(> (- (- fuse-feed fuse-load) 1V) 0V)")]
    [InlineData("fuse-feed - (fuse-load - 1 V) > 0 V", "(> (- fuse-feed (- fuse-load 1V)) 0V)")]
    [InlineData("fuse-feed + 2 * fuse-load > 0 V", "(> (+ fuse-feed (* 2 fuse-load)) 0V)")]
    [InlineData("(fuse-feed + fuse-load) * 2 > 0 V", "(> (* (+ fuse-feed fuse-load) 2) 0V)")]
    [InlineData("(fuse-feed) > 0 V and (known flow)", "(and (> fuse-feed 0V) (known flow))")]
    [InlineData("fuse-feed > -fuse-load", "(> fuse-feed (- fuse-load))")]
    [InlineData("fuse-feed > - -1 V", "(> fuse-feed (- -1V))")]
    [InlineData("2 * -3 < strokes", "(< (* 2 -3) strokes)")]
    [InlineData("fuse-feed / pump-current / 2 > 3 mohm", "(> (/ (/ fuse-feed pump-current) 2) 0.003mohm)")]
    [InlineData("relief-pressure * 0.9 > line-pressure", "(> (* relief-pressure 0.9) line-pressure)")]
    public void Sums_and_products_run_from_left_to_right(string text, string shape) => Parsed.ShapeOf(text).ShouldBe(shape);

    [Theory]
    [InlineData("fuse-feed > 1.5e-1 V", "(> fuse-feed 0.15V)")]
    [InlineData("fuse-feed > -5 V", "(> fuse-feed -5V)")]
    [InlineData("oil-temperature > -5 degC", "(> oil-temperature 268.15degC)")]
    [InlineData("charge > 25 %", "(> charge 0.25%)")]
    [InlineData("strokes > 3", "(> strokes 3)")]
    [InlineData("flow > 30 mL/min", "(> flow 5E-07mL/min)")]
    [InlineData("flow > 30 mL / 1 min", "(> flow (/ 3E-05mL 60min))")]
    [InlineData("12 N.m > 3 N.m", "(> 12N.m 3N.m)")]
    [InlineData("fuse-feed > 12 V/strokes", "(> fuse-feed (/ 12V strokes))")]
    [InlineData("fuse-feed > 12 V/jack-2 * 1 m", "(> fuse-feed (* (/ 12V jack-2) 1m))")]
    [InlineData("charge > 3 and known flow", "(and (> charge 3) (known flow))")]
    public void A_unit_is_the_longest_run_of_symbols_joined_without_spaces(string text, string shape) => Parsed.ShapeOf(text).ShouldBe(shape);

    [Theory]
    [InlineData("min(fuse-feed, fuse-load, 3 V) > 1 V", "(> (min fuse-feed fuse-load 3V) 1V)")]
    [InlineData("mean(fuse-feed,fuse-load) > 1 V", "(> (mean fuse-feed fuse-load) 1V)")]
    [InlineData("max(1,2) < strokes", "(< (max 1 2) strokes)")]
    [InlineData("abs(fuse-feed - fuse-load) < 1 V", "(< (abs (- fuse-feed fuse-load)) 1V)")]
    [InlineData("locked-rotor-current(fuse-feed, motor-resistance) > 1 A", "(> (locked-rotor-current fuse-feed motor-resistance) 1A)")]
    [InlineData("locked-rotor-current(resistance: 2 ohm, supply: fuse-feed) > 1 A", "(> (locked-rotor-current fuse-feed 2ohm) 1A)")]
    [InlineData("locked-rotor-current(fuse-feed, resistance: 2 ohm) > 1 A", "(> (locked-rotor-current fuse-feed 2ohm) 1A)")]
    [InlineData("warm-resistance(2 ohm) > 1 ohm", "(> (warm-resistance 2ohm 353.15degC) 1ohm)")]
    [InlineData("warm-resistance(2 ohm, at: oil-temperature) > 1 ohm", "(> (warm-resistance 2ohm oil-temperature) 1ohm)")]
    public void Calls_with_arguments_by_position_by_name_and_left_out(string text, string shape) => Parsed.ShapeOf(text).ShouldBe(shape);

    [Theory]
    [InlineData("any $side (ram-$side-wet is drips)", "(or (is ram-left-wet drips) (is ram-right-wet drips))")]
    [InlineData("every $side (ram-$side-wet is dry) and known flow", "(and (and (is ram-left-wet dry) (is ram-right-wet dry)) (known flow))")]
    [InlineData(
        "any $side (every $axle (jack-$side-$axle is up))",
        "(or (and (is jack-left-front up) (is jack-left-rear up)) (and (is jack-right-front up) (is jack-right-rear up)))")]
    [InlineData("any $lone (pump-fuse is blown)", "(is pump-fuse blown)")]
    [InlineData("any $nobody (pump-fuse is blown)", "False")]
    [InlineData("every $nobody (pump-fuse is blown)", "True")]
    public void Any_and_every_are_written_out_for_the_members(string text, string shape) => Parsed.ShapeOf(text).ShouldBe(shape);

    [Fact]
    public void Inside_a_template_the_set_is_the_copied_member_unless_any_or_every_rebinds_it()
    {
        var machine = new TestMachine { Copied = new Dictionary<string, string> { ["side"] = "left" } };

        Parsed.ShapeOf("ram-$side-wet is drips and any $side (ram-$side-wet is damp)", machine)
            .ShouldBe("(and (is ram-left-wet drips) (or (is ram-left-wet damp) (is ram-right-wet damp)))");
    }

    [Fact]
    public void Line_breaks_of_a_folded_text_count_as_spaces() =>
        Parsed.ShapeOf("pump-fuse is blown\n  or fuse-feed >\n 5\n V").ShouldBe("(or (is pump-fuse blown) (> fuse-feed 5V))");
}
