namespace DiagRules.Packs.Tests.Conditions;

/// <summary>What is said about conditions that are wrong: the whole message once for each code, and the place by its mark.</summary>
public sealed class ConditionProblemTests
{
    [Theory]
    [InlineData(
        "pump-fuse [|blown|]",
        "Expected 'is' or a comparison such as '> 5 V', but found 'blown'; write 'pump-fuse is blown' to test a grade.\n    pump-fuse blown\n              ^")]
    [InlineData(
        "[|>|] 5 V",
        "Expected a test, which begins with an id, a number, a calculation, 'not', 'known', 'unknown', 'any', 'every' or '(', but found '>'; say what is compared, such as 'fuse-feed > 5 V'.\n    > 5 V\n    ^")]
    [InlineData(
        "[|!|] pump-fuse is blown",
        "Expected a test, which begins with an id, a number, a calculation, 'not', 'known', 'unknown', 'any', 'every' or '(', but found '!'; write 'not', or '!=' between two counts.\n    ! pump-fuse is blown\n    ^")]
    [InlineData(
        "[|*|] 5 V",
        "Expected a test, which begins with an id, a number, a calculation, 'not', 'known', 'unknown', 'any', 'every' or '(', but found '*'; '*' has a number on either side.\n    * 5 V\n    ^")]
    [InlineData(
        "[|%|] 5",
        "Expected a test, which begins with an id, a number, a calculation, 'not', 'known', 'unknown', 'any', 'every' or '(', but found '%'; percent stands behind its number, as in '25 %'.\n    % 5\n    ^")]
    [InlineData(
        "pump-fuse is blown [|adn|] known flow",
        "Expected 'and', 'or' or the end of the condition, but found 'adn'; did you mean 'and'?\n    pump-fuse is blown adn known flow\n                       ^")]
    [InlineData(
        "pump-fuse is [|and|] known flow",
        "Expected a grade of 'pump-fuse', but found 'and'.\n    pump-fuse is and known flow\n                 ^")]
    [InlineData(
        "pump-fuse is blown [|AND|] known flow",
        "Expected 'and', 'or' or the end of the condition, but found 'AND'; write 'and' in small letters.\n    pump-fuse is blown AND known flow\n                       ^")]
    [InlineData(
        "(pump-fuse is blown[||]",
        "Expected 'and', 'or' or ')', but it ends.\n    (pump-fuse is blown\n                       ^")]
    [InlineData(
        "pump-fuse is blown[|)|]",
        "Expected 'and', 'or' or the end of the condition, but found ')'.\n    pump-fuse is blown)\n                      ^")]
    [InlineData(
        "strokes =[|=|] 3",
        "Expected a number, a reading, a parameter or a calculation, but found '='; write one '=' between counts, and 'is' before a grade.\n    strokes == 3\n             ^")]
    [InlineData(
        "pump-sound is stalled or silent or [|worse|]",
        "Expected another grade ('or worse' goes with one grade alone), but found 'worse'.\n    pump-sound is stalled or silent or worse\n                                       ^")]
    [InlineData(
        "any [|side|] (ram-$side-wet is drips)",
        "Expected the name of a set behind 'any', such as 'any $side ( ... )', but found 'side'.\n    any side (ram-$side-wet is drips)\n        ^")]
    [InlineData(
        "fuse-feed[|+|]fuse-load > 3 V",
        "A '+' stands between spaces: write 'fuse-feed + fuse-load'.\n    fuse-feed+fuse-load > 3 V\n             ^")]
    [InlineData(
        "[||]",
        "Expected a test, which begins with an id, a number, a calculation, 'not', 'known', 'unknown', 'any', 'every' or '(', but it is empty.")]
    [InlineData(
        "1 V < fuse-feed < 3 V [|<|] 5 V",
        "Expected 'and', 'or' or the end of the condition, but found '<'; join a further comparison with 'and'.\n    1 V < fuse-feed < 3 V < 5 V\n                          ^")]
    public void What_is_not_readable_shows_the_line_a_caret_and_what_may_stand_there(string marked, string message) =>
        Parsed.ShouldFail(marked, "DR3001", message);

    [Fact]
    public void A_long_condition_is_shown_around_the_place()
    {
        var known = string.Concat(Enumerable.Repeat("known flow and ", 10));

        var problem = Parsed.From($"{known}pump-fuse blown and {known}known flow").Problems.ShouldHaveSingleItem();

        var lines = problem.Message.Split('\n');
        lines.Length.ShouldBe(3);
        lines[1].ShouldBe("    ... own flow and known flow and pump-fuse blown and known flow and known flow an ...");
        lines[1][lines[2].IndexOf('^')..].ShouldStartWith("blown and");
    }

    [Theory]
    [InlineData("[|fuse-feed-fuse-load|] > 3 V", "'fuse-feed-fuse-load' is read as one id, and there is none; write 'fuse-feed - fuse-load' with spaces for the difference.")]
    [InlineData(
        "fuse-feed [|-|]fuse-load > 3 V",
        "A minus between two numbers stands between spaces: write 'fuse-feed - fuse-load' for the difference, or 'fuse-feed-fuse-load' if it is one id.")]
    [InlineData(
        "fuse-feed[|-|] fuse-load > 3 V",
        "A minus between two numbers stands between spaces: write 'fuse-feed - fuse-load' for the difference, or 'fuse-feed-fuse-load' if it is one id.")]
    [InlineData("5 V[|-|]3 V < fuse-feed", "A minus between two numbers stands between spaces: write '5 V - 3 V' for the difference.")]
    [InlineData("[|fuse-feed-3 V|] > 3 V", "'fuse-feed-3' is read as one id; write 'fuse-feed - 3 V' with spaces for the difference.")]
    public void A_minus_without_spaces_shows_both_readings(string marked, string message) => Parsed.ShouldFail(marked, "DR3002", message);

    [Fact]
    public void Is_not_with_or_shows_both_meanings() => Parsed.ShouldFail(
        "known flow and [|pump-sound is not stalled or silent|]",
        "DR3003",
        "'pump-sound is not stalled or silent' can be read in two ways: write 'not (pump-sound is stalled or silent)' if none of them may be, " +
        "or 'pump-sound is not stalled or pump-sound is silent' if only the first may not be.");

    [Theory]
    [InlineData("[|11 V <= fuse-feed > 3 V|]", "The chain '11 V <= fuse-feed > 3 V' runs both ways: write '11 V <= fuse-feed and fuse-feed > 3 V'.")]
    [InlineData("[|1 <= strokes = 3|]", "The chain '1 <= strokes = 3' holds an equals sign: write '1 <= strokes and strokes = 3'.")]
    public void A_chain_that_turns_is_written_as_two_comparisons(string marked, string message) => Parsed.ShouldFail(marked, "DR3004", message);

    [Theory]
    [InlineData(
        "[|fuse-feed = 12 V|]",
        "'fuse-feed = 12 V' compares what is measured with '=', and no measured value is ever quite the same; write a band such as '11.5 V <= fuse-feed <= 12.5 V'. Only counts ('unit: number') can be equal.")]
    [InlineData(
        "[|0 V != fuse-feed|]",
        "'0 V != fuse-feed' compares what is measured with '!=', and no measured value is ever quite the same; write a band such as 'not (-0.1 V <= fuse-feed <= 0.1 V)'. Only counts ('unit: number') can be equal.")]
    [InlineData(
        "[|fuse-feed = fuse-load|]",
        "'fuse-feed = fuse-load' compares what is measured with '=', and no measured value is ever quite the same; write a band such as 'abs(fuse-feed - fuse-load) <= 0.1 V'. Only counts ('unit: number') can be equal.")]
    [InlineData(
        "[|fuse-feed / fuse-load = 1|]",
        "'fuse-feed / fuse-load = 1' compares what is measured with '=', and no measured value is ever quite the same; write a band such as '0.95 <= fuse-feed / fuse-load <= 1.05'. Only counts ('unit: number') can be equal.")]
    [InlineData(
        "[|charge = 5 %|]",
        "'charge = 5 %' compares what is measured with '=', and no measured value is ever quite the same; write a band such as '4.95 % <= charge <= 5.05 %'. Only counts ('unit: number') can be equal.")]
    public void Only_counts_can_be_equal(string marked, string message) => Parsed.ShouldFail(marked, "DR3005", message);

    [Theory]
    [InlineData("[|pump-fuse|] > 3 V", "'pump-fuse' is a finding with grades, not a number; test it with 'is', such as 'pump-fuse is blown'.")]
    [InlineData("1 V + [|brushes-worn|] > 3 V", "'brushes-worn' is a cause with grades, not a number; test it with 'is', such as 'brushes-worn is present'.")]
    [InlineData("[|fuse-feed is blown|]", "'fuse-feed' is a reading, a number, and 'is' tests the grade of a finding or cause; compare it, such as 'fuse-feed > 5 V'.")]
    [InlineData("[|fuse-rating is blown|]", "'fuse-rating' is a parameter, a number, and 'is' tests the grade of a finding or cause; compare it, such as 'fuse-rating > 5 A'.")]
    [InlineData("[|2 * fuse-feed is|] blown", "'2 * fuse-feed' is a number, and 'is' tests the grade of a finding or cause; compare the number, such as with '>'.")]
    public void Grades_and_numbers_are_not_taken_for_each_other(string marked, string message) => Parsed.ShouldFail(marked, "DR3006", message);

    [Theory]
    [InlineData("[|pump-fusse|] is blown", "No reading, finding, cause or parameter 'pump-fusse'. Did you mean 'pump-fuse'?")]
    [InlineData("known [|Fuse-Feed|]", "No reading, finding, cause or parameter 'Fuse-Feed'. Did you mean 'fuse-feed'?")]
    [InlineData("fuse-feed > [|low_volts|]", "No reading, finding, cause or parameter 'low_volts'. Did you mean 'low-volts'?")]
    [InlineData("known [|zebra|]", "No reading, finding, cause or parameter 'zebra'.")]
    public void An_unknown_id_comes_with_near_ones(string marked, string message) => Parsed.ShouldFail(marked, "DR2004", message);

    [Theory]
    [InlineData("[|motor-supply|] is weak", "'motor-supply' is an effect, which nobody observes; make it a finding if it is to be tested ('is' tests findings, causes and preconditions).")]
    [InlineData("known [|motor-supply|]", "'motor-supply' is an effect, which nobody observes; make it a finding if it is to be tested ('known' and 'unknown' take readings, findings and causes).")]
    [InlineData("known [|measure-pump-fuse|]", "'measure-pump-fuse' is a check; 'known' and 'unknown' take readings, findings and causes.")]
    [InlineData("known [|fuse-rating|]", "'fuse-rating' is a parameter, which is always known; 'known' and 'unknown' take readings, findings and causes.")]
    [InlineData("[|renew-pump-fuse|] is done", "'renew-pump-fuse' is a repair; 'is' tests findings, causes and preconditions.")]
    [InlineData("[|will-not-lift|] > 3 V", "'will-not-lift' is a complaint; readings and parameters are numbers.")]
    public void An_entry_that_cannot_be_tested_says_what_can(string marked, string message) => Parsed.ShouldFail(marked, "DR2007", message);

    [Theory]
    [InlineData("pump-fuse is [|bown|]", "Finding 'pump-fuse' has no grade 'bown'; its grades are 'whole' and 'blown'. Did you mean 'blown'?")]
    [InlineData("pump-sound is silent or [|loud|]", "Finding 'pump-sound' has no grade 'loud'; its grades are 'runs-freely', 'runs-slowly', 'stalled', 'clicks-only' and 'silent'.")]
    [InlineData("switch-off is [|off|]", "Precondition 'switch-off' has no grade 'off'; its grades are 'absent' and 'present'.")]
    public void An_unknown_grade_comes_with_those_there_are(string marked, string message) => Parsed.ShouldFail(marked, "DR2008", message);

    [Theory]
    [InlineData("any [|$sides|] (known flow)", "DR2010", "'$sides' names no set; the pack has '$axle', '$lone', '$nobody' and '$side'.")]
    [InlineData("known [|ram-$left-wet|]", "DR2010", "'$left' names no set; the pack has '$axle', '$lone', '$nobody' and '$side'.")]
    [InlineData(
        "known [|ram-$side-wet|]",
        "DR2011",
        "'ram-$side-wet' stands for 'left' and 'right' at once, and a test looks at one; use 'any $side ( ... )' or 'every $side ( ... )'.")]
    [InlineData(
        "any $side (known [|jack-$side-$axle|])",
        "DR2011",
        "'jack-$side-$axle' stands for 'front' and 'rear' at once, and a test looks at one; use 'any $axle ( ... )' or 'every $axle ( ... )'.")]
    [InlineData("any $side (known [|ram-$side-wt|])", "DR2004", "No reading, finding, cause or parameter 'ram-left-wt'. Did you mean 'ram-left-wet'?")]
    public void Sets_and_members_are_looked_up(string marked, string code, string message) => Parsed.ShouldFail(marked, code, message);

    [Theory]
    [InlineData("fuse-feed > [|12,5|] V", "DR3101", "'12,5' is not a number as packs write it: write '12.5'.")]
    [InlineData("fuse-feed > [|12V|]", "DR3101", "'12V' is not a number as packs write it: write '12 V', with one space before the unit.")]
    [InlineData("charge > [|25%|]", "DR3101", "'25%' is not a number as packs write it: write '25 %', with one space before the unit.")]
    [InlineData("fuse-feed > [|1 200 V|]", "DR3101", "'1 200 V' is two numbers side by side: write '1200 V' if it is one.")]
    [InlineData("fuse-feed > 12 [|v|]", "DR3104", "No unit 'v'. Did you mean 'V'? Small and capital letters matter.")]
    [InlineData("flow > 30 [|ml/min|]", "DR3104", "No unit 'ml/min'. Did you mean 'mL/min'? Small and capital letters matter.")]
    public void Numbers_and_units_are_put_right(string marked, string code, string message) => Parsed.ShouldFail(marked, code, message);

    [Fact]
    public void All_problems_of_a_condition_come_out_at_once()
    {
        var parsed = Parsed.From("pump-fuse is bown and known and fuse-feed > 3 A or (fuse-feed + ) > 3 V and 12,5 V < fuse-lod");

        parsed.Condition.ShouldBeNull();
        parsed.Problems.Select(problem => problem.Code).ShouldBe(["DR2008", "DR3001", "DR3102", "DR3001", "DR3101", "DR2004"]);
    }

    [Fact]
    public void What_one_member_shows_is_not_repeated_for_the_others()
    {
        var problem = Parsed.From("any $side (ram-$side-wet is wet)").Problems.ShouldHaveSingleItem();

        problem.Code.ShouldBe("DR2008");
        problem.Place.Member.ShouldBe("left");
    }
}
