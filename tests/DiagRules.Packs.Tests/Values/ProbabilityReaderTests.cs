using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Tests.Values;

public sealed class ProbabilityReaderTests
{
    private const string Words = "always, nearly-always, usually, often, sometimes, seldom, hardly-ever, never";

    [Theory]
    [InlineData("0", 0)]
    [InlineData("1", 1)]
    [InlineData("0.25", 0.25)]
    [InlineData("1e-3", 0.001)]
    [InlineData("25 %", 0.25)]
    [InlineData("100 %", 1)]
    [InlineData("always", 1)]
    [InlineData("nearly-always", 0.95)]
    [InlineData("usually", 0.75)]
    [InlineData("often", 0.5)]
    [InlineData("sometimes", 0.25)]
    [InlineData("seldom", 0.1)]
    [InlineData("hardly-ever", 0.02)]
    [InlineData("never", 0)]
    public void A_number_a_percentage_or_a_word(string text, double probability) => Sampled.Sound(text, Reader()).ShouldBe(probability);

    [Theory]
    [InlineData("[|1.2|]", "DR4001", "'1.2' is not a probability, which is 0..1, a percentage, or one of " + Words + ". Did you mean '1.2 %'?")]
    [InlineData("[|120 %|]", "DR4001", "'120 %' is not a probability, which is 0..1, a percentage, or one of " + Words + ".")]
    [InlineData("[|-0.1|]", "DR4001", "'-0.1' is not a probability, which is 0..1, a percentage, or one of " + Words + ".")]
    [InlineData("[|0.5 V|]", "DR4001", "'0.5 V' is not a probability, which is 0..1, a percentage, or one of " + Words + ".")]
    [InlineData("[|offen|]", "DR4001", "'offen' is not a probability, which is 0..1, a percentage, or one of " + Words + ". Did you mean 'often'?")]
    [InlineData("[|Usually|]", "DR4001", "'Usually' is not a probability, which is 0..1, a percentage, or one of " + Words + ". Did you mean 'usually'?")]
    [InlineData("[|0,5|]", "DR3101", "'0,5' is not a number as packs write it: write '0.5'.")]
    [InlineData("[|25%|]", "DR3101", "'25%' is not a number as packs write it: write '25 %', with one space before the unit.")]
    public void Anything_else_is_refused(string marked, string code, string message) => Sampled.ShouldFail(marked, Reader(), code, message);

    [Fact]
    public void Words_of_the_pack_come_beside_the_built_in_ones_and_may_replace_them()
    {
        var words = new ProbabilityWords(new Dictionary<string, double> { ["often"] = 0.4, ["once-a-year"] = 0.01 });

        Sampled.Sound("often", Reader(words)).ShouldBe(0.4);
        Sampled.Sound("once-a-year", Reader(words)).ShouldBe(0.01);
        Sampled.Sound("usually", Reader(words)).ShouldBe(0.75);
        words.All.ShouldBe(["always", "nearly-always", "usually", "often", "sometimes", "seldom", "hardly-ever", "once-a-year", "never"]);
        ProbabilityWords.Default.TryGet("once-a-year", out _).ShouldBeFalse();
    }

    private static Func<PlacedText, ProblemSink, double?> Reader(ProbabilityWords? words = null) =>
        (text, problems) => ProbabilityReader.Read(text, words ?? ProbabilityWords.Default, problems);
}
