using DiagRules.Model;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Tests.Values;

/// <summary>The kinds of values that are done with a few lines: shares, money, flags, dates, trust.</summary>
public sealed class PlainValueTests
{
    [Theory]
    [InlineData("9", 9)]
    [InlineData("0", 0)]
    [InlineData("1.5", 1.5)]
    public void A_share_is_a_plain_number(string text, double share) => Sampled.Sound(text, Share).ShouldBe(share);

    [Theory]
    [InlineData("often")]
    [InlineData("25 %")]
    [InlineData("25%")]
    [InlineData("-1")]
    [InlineData("9 V")]
    [InlineData("")]
    public void A_share_is_nothing_else(string text) => Sampled.ShouldFail(
        $"[|{text}|]",
        Share,
        "DR4004",
        $"The share of 'brushes-worn' is '{text}'; it must be a plain number of 0 or more, such as '9': how often it is behind a complaint compared with the others.");

    [Fact]
    public void A_share_with_a_decimal_comma_is_shown_how_to_write_it() =>
        Sampled.ShouldFail("[|2,5|]", Share, "DR3101", "'2,5' is not a number as packs write it: write '2.5'.");

    [Fact]
    public void Money_for_an_hour_has_a_currency() =>
        Sampled.Sound("84 EUR/h", MoneyReader.ReadRate).ShouldBe(new Money(84, "EUR"));

    [Theory]
    [InlineData("[|84|]", "DR3103", "'84' is not money for an hour; write the amount and the currency in three capital letters, such as '84 EUR/h'.")]
    [InlineData("[|84 EUR|]", "DR3103", "'84 EUR' is not money for an hour; write the amount and the currency in three capital letters, such as '84 EUR/h'.")]
    [InlineData("[|84 Euro/h|]", "DR3104", "'84 Euro/h' is not money for an hour; write the amount and the currency in three capital letters, such as '84 EUR/h'.")]
    [InlineData("[|84  EUR/h|]", "DR3101", "'84  EUR/h' is not an amount as packs write it: write '84 EUR/h', with one space.")]
    [InlineData("[|-84 EUR/h|]", "DR3101", "'-84 EUR/h' is below zero; costs are 0 or more.")]
    public void A_rate_without_its_parts_is_refused(string marked, string code, string message) => Sampled.ShouldFail(marked, MoneyReader.ReadRate, code, message);

    [Fact]
    public void A_cost_is_money_or_minutes_worth()
    {
        Sampled.Sound("2 EUR", MoneyReader.ReadExpense).ShouldBe((new Expense(0, 2), "EUR"));
        Sampled.Sound("2.5", MoneyReader.ReadExpense).ShouldBe((new Expense(2.5, 0), null));
        Sampled.ShouldFail("[|2 \u20AC|]", MoneyReader.ReadExpense, "DR3104",
            "'2 \u20AC' is not a cost; write the amount and the currency in three capital letters, such as '2 EUR', or a bare number for minutes' worth.");
    }

    [Fact]
    public void Flags_are_yes_and_no()
    {
        Sampled.Sound("yes", Flag).ShouldBe(true);
        Sampled.Sound("no", Flag).ShouldBe(false);
    }

    [Theory]
    [InlineData("[|true|]", "DR1011", "'lasting' is 'true', which other tools read in their own way; write 'yes' or 'no'.")]
    [InlineData("[|NULL|]", "DR1011", "'lasting' is 'NULL', which other tools read in their own way; write 'yes' or 'no'.")]
    [InlineData("[|Yes|]", "DR1009", "'lasting' is 'Yes'; it takes 'yes' or 'no', in small letters.")]
    [InlineData("[|on|]", "DR1009", "'lasting' is 'on'; it takes 'yes' or 'no', in small letters.")]
    public void Flags_are_nothing_else(string marked, string code, string message) => Sampled.ShouldFail(marked, Flag, code, message);

    [Theory]
    [InlineData("2026-03-02")]
    [InlineData("2024-02-29")]
    public void A_day_is_one_that_the_calendar_has(string text) =>
        Sampled.Sound(text, (placed, problems) => DateReader.ReadDate(placed, "recorded", problems)).ShouldBe(text);

    [Theory]
    [InlineData("2026-02-29")]
    [InlineData("02.03.2026")]
    [InlineData("2026-3-2")]
    [InlineData("2026-03-02T14:30")]
    [InlineData("")]
    public void Other_days_are_refused(string text) => Sampled.ShouldFail(
        $"[|{text}|]",
        (placed, problems) => DateReader.ReadDate(placed, "recorded", problems),
        "DR1009",
        $"'recorded' is '{text}'; it takes a day that the calendar has, year first (ISO 8601), such as '2026-03-02'.");

    [Theory]
    [InlineData("2026-03-02")]
    [InlineData("2026-03-02T14:30")]
    [InlineData("2026-03-02T14:30:59")]
    [InlineData("2026-03-02T14:30Z")]
    [InlineData("2026-03-02T14:30:59+01:00")]
    [InlineData("14:30")]
    public void A_moment_is_a_day_a_time_or_both(string text) => Sampled.Sound(text, Moment).ShouldBe(text);

    [Theory]
    [InlineData("yesterday")]
    [InlineData("25:00")]
    [InlineData("2026-03-02 14:30")]
    public void Other_moments_are_refused(string text) => Sampled.ShouldFail(
        $"[|{text}|]", Moment, "DR1009", $"'at' is '{text}'; it takes a day or time (ISO 8601), such as '2026-03-02' or '2026-03-02T14:30'.");

    [Theory]
    [InlineData("0.9", 0.9)]
    [InlineData("0", 0)]
    [InlineData("1", 1)]
    [InlineData("doubtful", 0.6)]
    public void Trust_is_a_number_up_to_one_or_doubtful(string text, double trust) => Sampled.Sound(text, TrustReader.Read).ShouldBe(trust);

    [Theory]
    [InlineData("1.5")]
    [InlineData("-1")]
    [InlineData("90 %")]
    [InlineData("sure")]
    public void Other_trust_is_refused(string text) => Sampled.ShouldFail(
        $"[|{text}|]", TrustReader.Read, "DR4001", $"Trust is '{text}'; it takes a number from 0 (not believed at all) to 1 (certain), or 'doubtful' (0.6).");

    [Fact]
    public void Trust_with_a_decimal_comma_is_shown_how_to_write_it() =>
        Sampled.ShouldFail("[|0,9|]", TrustReader.Read, "DR3101", "'0,9' is not a number as packs write it: write '0.9'.");

    private static double? Share(PlacedText text, ProblemSink problems) => ShareReader.Read(text, "brushes-worn", problems);

    private static bool? Flag(PlacedText text, ProblemSink problems) => FlagReader.Read(text, "lasting", problems);

    private static string? Moment(PlacedText text, ProblemSink problems) => DateReader.ReadMoment(text, "at", problems);
}
