using DiagRules.Packs.Values;

namespace DiagRules.Packs.Tests.Values;

public sealed class NumberReaderTests
{
    [Theory]
    [InlineData("12", 12)]
    [InlineData("0.5", 0.5)]
    [InlineData("-0.5", -0.5)]
    [InlineData("1e-3", 0.001)]
    [InlineData("2.5E+2", 250)]
    [InlineData("007", 7)]
    public void Numbers_have_digits_a_point_and_a_power_of_ten(string text, double value) =>
        Sampled.Sound(text, NumberReader.Read).ShouldBe(value);

    [Theory]
    [InlineData("[|12,5|]", "'12,5' is not a number as packs write it: write '12.5'.")]
    [InlineData("[|-12,5|]", "'-12,5' is not a number as packs write it: write '-12.5'.")]
    [InlineData("[|0,500|]", "'0,500' is not a number as packs write it: write '0.500'.")]
    [InlineData("[|1,200|]", "'1,200' is not a number as packs write it: write '1200', or '1.200' if the comma is a decimal one.")]
    [InlineData("[|1,200,000|]", "'1,200,000' is not a number as packs write it: write '1200000'.")]
    [InlineData("[|1.200,5|]", "'1.200,5' is not a number as packs write it: write '1200.5'.")]
    [InlineData("[|1.200.000|]", "'1.200.000' is not a number as packs write it: write '1200000'.")]
    [InlineData("[|1'200|]", "'1'200' is not a number as packs write it: write '1200'.")]
    [InlineData("[|1_200|]", "'1_200' is not a number as packs write it: write '1200'.")]
    [InlineData("[|1 200|]", "'1 200' is not a number as packs write it: write '1200'.")]
    [InlineData("[|0x1F|]", "'0x1F' is not a number as packs write it: write '31'.")]
    [InlineData("[|1:30|]", "'1:30' is not a number: write one number with a unit, such as '90 s' or '1.5 h'.")]
    [InlineData("[|.5|]", "'.5' is not a number as packs write it: write '0.5'.")]
    [InlineData("[|-.5|]", "'-.5' is not a number as packs write it: write '-0.5'.")]
    [InlineData("[|5.|]", "'5.' is not a number as packs write it: write '5'.")]
    [InlineData("[|+5|]", "'+5' is not a number as packs write it: write '5'.")]
    [InlineData("[|\u22125|]", "'\u22125' is not a number as packs write it: write '-5'.")]
    [InlineData("[|12V|]", "'12V' is not a number as packs write it: write '12 V', with one space before the unit.")]
    [InlineData("[|12 V|]", "'12 V' is not a bare number: write '12' without what stands behind it.")]
    [InlineData("[|1.2.3|]", "'1.2.3' is not a number: write digits with a decimal point, such as '12.5'.")]
    [InlineData("[|twelve|]", "'twelve' is not a number: write digits with a decimal point, such as '12.5'.")]
    [InlineData("[|.inf|]", "'.inf' is not a number: write digits with a decimal point, such as '12.5'.")]
    [InlineData("[|1e999|]", "'1e999' is too large: numbers go up to 1.79e308.")]
    [InlineData("[||]", "'' is not a number: write digits with a decimal point, such as '12.5'.")]
    public void Other_spellings_are_refused_with_the_right_one(string marked, string message) =>
        Sampled.ShouldFail(marked, NumberReader.Read, "DR3101", message);

    [Theory]
    [InlineData("[|2.5|]")]
    [InlineData("[|0|]")]
    [InlineData("[|-3|]")]
    [InlineData("[|1e12|]")]
    public void A_count_is_whole_and_at_least_one(string marked) =>
        Sampled.ShouldFail(marked, (text, problems) => NumberReader.ReadCount(text, problems), "DR3101", $"'{marked[2..^2]}' is not a whole number of at least 1.");

    [Fact]
    public void A_count_may_be_written_as_any_number() =>
        Sampled.Sound("1e1", (text, problems) => NumberReader.ReadCount(text, problems)).ShouldBe(10);
}
