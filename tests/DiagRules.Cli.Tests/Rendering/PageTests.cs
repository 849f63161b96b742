using CsCheck;
using DiagRules.Cli.Rendering;

namespace DiagRules.Cli.Tests.Rendering;

public sealed class PageTests
{
    [Fact]
    public void ALongText_KeepsItsLeftEdge() => Print(20, page => page.Item(2, "Why", 6, "It tells one from the other.")).ShouldBe("""
          Why   It tells one
                from the
                other.

        """, StringCompareShould.IgnoreLineEndings);

    [Fact]
    public void ALongLabel_PushesOnlyItsOwnLine() => Print(20, page => page.Item(0, "WARNING W012", 8, "It is not fused.")).ShouldBe("""
        WARNING W012 It is
                not fused.

        """, StringCompareShould.IgnoreLineEndings);

    [Fact]
    public void BlankLines_NeverPileUp() => Print(20, page =>
    {
        page.Blank();
        page.Text(0, "one");
        page.Blank();
        page.Blank();
        page.Text(0, "two");
        page.Blank();
    }).ShouldBe("one\n\ntwo\n");

    [Fact]
    public void WordsHeldTogether_AreNotParted() => Print(12, page => page.Text(0, "It takes " + Page.Together("12 minutes"))).ShouldBe("It takes\n12 minutes\n");

    [Fact]
    public void NothingToSay_WritesNoLine() => Print(20, page => page.Text(2, "")).ShouldBe("");

    [Fact]
    public void Colour_WrapsTheLabelAndCountsNoColumns() => Print(18, page => page.Item(0, "DANGER W019", 13, "Keep out.", Ink.Danger), hasColour: true)
        .ShouldBe("\u001b[1;97;41mDANGER W019\u001b[0m  Keep\n             out.\n");

    [Fact]
    public void Wrapping_LosesNoWordAndKeepsToTheWidth() => Gen.Select(Gen.String[Gen.Char["ab \u00e9"], 0, 60], Gen.Int[5, 30]).Sample((text, width) =>
    {
        var lines = Page.Wrap(text, width, width).ToList();

        string.Join(' ', lines).Split(' ', StringSplitOptions.RemoveEmptyEntries).ShouldBe(text.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        lines.ShouldAllBe(line => line.Length <= width || !line.Contains(' '));
    });

    private static string Print(int width, Action<Page> write, bool hasColour = false)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        write(new Page(writer, width, hasColour));
        return writer.ToString();
    }
}
