using System.Globalization;
using System.Xml.Linq;
using DiagRules.Charts;
using DiagRules.Charts.Picture;

namespace DiagRules.Tests.Charts;

public sealed class ChartPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>Titles that try to break out of the markup, to turn the text around, and to be wider than any box.</summary>
    private static readonly string Hostile = ChartSamples.Seen
        .Replace("Brushes worn", "\"<script>alert('x')</script> & ]]> \\u202Eworn \\u0007 --></svg>\"", StringComparison.Ordinal)
        .Replace("Renew the brushes", "\"Renew " + new string('W', 120) + " and the holder, then run them in for ten minutes without load\"", StringComparison.Ordinal)
        .Replace("It does nothing", "\"<b>It</b> does nothing at all, neither on the switch nor on the remote control, summer and winter, in the yard and on the road, " + new string('m', 200) + "\"", StringComparison.Ordinal);

    public static TheoryData<string> Packs => [ChartSamples.Seen, ChartSamples.Measured, Hostile];

    [Theory]
    [MemberData(nameof(Packs))]
    public void Every_text_stays_within_its_sheet_and_box(string pack)
    {
        foreach (var sheet in SheetsOf(pack))
        {
            var boxes = BoxesOf(sheet);
            foreach (var text in sheet.Elements(Svg + "text"))
            {
                var (left, right, baseline, size) = Extent(text);
                left.ShouldBeGreaterThanOrEqualTo(0);
                right.ShouldBeLessThanOrEqualTo(Sheets.Width - Sheets.Margin + 0.5, text.Value);
                var box = boxes.Find(box => left >= box.X && left <= box.X + box.Width && baseline > box.Y && baseline <= box.Y + box.Height);
                if (box.Width > 0)
                {
                    right.ShouldBeLessThanOrEqualTo(box.X + box.Width, text.Value);
                    (baseline - (0.75 * size)).ShouldBeGreaterThanOrEqualTo(box.Y, text.Value);
                    (baseline + (0.2 * size)).ShouldBeLessThanOrEqualTo(box.Y + box.Height, text.Value);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Packs))]
    public void Boxes_lie_on_the_sheet_and_do_not_overlap(string pack)
    {
        foreach (var sheet in SheetsOf(pack))
        {
            var boxes = BoxesOf(sheet);
            boxes.ShouldAllBe(box => box.X >= Sheets.Margin - 0.1 && box.X + box.Width <= Sheets.Width - Sheets.Margin + 0.1);
            for (var i = 0; i < boxes.Count; i++)
            {
                for (var j = 0; j < i; j++)
                {
                    var (a, b) = (boxes[i], boxes[j]);
                    (a.X + a.Width <= b.X || b.X + b.Width <= a.X || a.Y + a.Height <= b.Y || b.Y + b.Height <= a.Y).ShouldBeTrue();
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Packs))]
    public void Lines_down_the_same_gap_do_not_touch_and_cross_no_box(string pack)
    {
        foreach (var sheet in SheetsOf(pack))
        {
            var trunks = sheet.Elements(Svg + "path").Select(path => (string)path.Attribute("d")!).Where(path => path.Contains('V', StringComparison.Ordinal)).Select(Trunk).ToList();
            foreach (var trunk in trunks)
            {
                BoxesOf(sheet).ShouldNotContain(box => trunk.X > box.X && trunk.X < box.X + box.Width && trunk.Top < box.Y + box.Height && trunk.Bottom > box.Y);
                trunks.Count(other => Math.Abs(other.X - trunk.X) < 1 && other.Top < trunk.Bottom && other.Bottom > trunk.Top).ShouldBe(1);
            }
        }
    }

    [Fact]
    public void Hostile_texts_are_shown_as_text()
    {
        var chart = ChartSamples.Draw(Hostile, "dead");

        XDocument.Parse(chart.ToSvg()).Descendants().Select(element => element.Name.LocalName).Distinct()
            .ShouldBeSubsetOf(["svg", "title", "g", "rect", "path", "text"]);
        var html = XDocument.Parse(chart.ToHtml());
        html.Descendants().ShouldNotContain(element => element.Name.LocalName == "script" || element.Name.LocalName == "b" && element.Value == "It");
        chart.ToHtml().ShouldNotContain("\u202E");
        chart.ToHtml().ShouldNotContain("\u0007");
    }

    [Fact]
    public void Hazards_stand_beside_the_steps_with_signal_word_and_number()
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen, "dead");

        var texts = XDocument.Parse(chart.ToSvg()).Descendants(Svg + "text").Select(text => text.Value).ToList();
        texts.ShouldContain("WARNING W012");
        texts.ShouldContain("CAUTION W017");
        chart.ToText().ShouldContain("WARNING W012 unfused");
        chart.ToHtml().ShouldContain("<span class=\"signal Warning\">WARNING W012</span>");
    }

    [Fact]
    public void A_large_chart_goes_on_at_another_and_every_jump_lands()
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen, options: ChartSamples.Whole);

        var texts = string.Join(' ', XDocument.Parse(chart.ToSvg()).Descendants(Svg + "text").Select(text => text.Value));
        var headings = System.Text.RegularExpressions.Regex.Matches(texts, "Chart ([0-9]+)").Select(match => match.Groups[1].Value).ToHashSet();
        var jumps = System.Text.RegularExpressions.Regex.Matches(texts, "go on at chart ([0-9]+)", System.Text.RegularExpressions.RegexOptions.IgnoreCase).Select(match => match.Groups[1].Value).ToList();
        headings.Count.ShouldBeGreaterThan(1);
        jumps.ShouldNotBeEmpty();
        jumps.ShouldBeSubsetOf(headings);
    }

    [Fact]
    public void Every_box_is_drawn_once()
    {
        var chart = ChartSamples.Draw(ChartSamples.Seen, options: ChartSamples.Whole);

        // The number of a box stands alone in white, in the middle of its badge.
        var badges = XDocument.Parse(chart.ToSvg()).Descendants(Svg + "text")
            .Where(text => (string?)text.Attribute("text-anchor") == "middle" && int.TryParse(text.Value, CultureInfo.InvariantCulture, out _))
            .Select(text => int.Parse(text.Value, CultureInfo.InvariantCulture));
        badges.Order().ShouldBe(chart.Boxes.Select(box => box.Number));
    }

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    public void Text_keeps_to_its_width(int width)
    {
        var text = ChartSamples.Draw(Hostile, "dead").ToText(width);

        text.Split('\n').ShouldAllBe(line => new StringInfo(line).LengthInTextElements <= width);
        Should.Throw<ArgumentOutOfRangeException>(() => ChartSamples.Draw(ChartSamples.Seen).ToText(39));
    }

    // Adobe Core 14 AFM, Helvetica: H 722, e 556, l 222, o 556; the estimate adds a margin for wider fonts.
    [Fact]
    public void A_text_is_taken_to_be_at_least_as_wide_as_Helvetica_sets_it() =>
        Lettering.Width("Hello", 10).ShouldBeInRange((7.22 + 5.56 + 2.22 + 2.22 + 5.56), 1.2 * (7.22 + 5.56 + 2.22 + 2.22 + 5.56));

    private static IEnumerable<XElement> SheetsOf(string pack) =>
        XDocument.Parse(ChartSamples.Draw(pack, pack == ChartSamples.Measured ? null : "dead", ChartSamples.Whole).ToSvg()).Root!.Elements(Svg + "g");

    private static List<(double X, double Y, double Width, double Height)> BoxesOf(XElement sheet) =>
        [.. sheet.Elements(Svg + "rect").Where(rect => Number(rect, "width") == BoxPicture.Width)
            .Select(rect => (Number(rect, "x"), Number(rect, "y"), Number(rect, "width"), Number(rect, "height")))];

    private static (double Left, double Right, double Baseline, double Size) Extent(XElement text)
    {
        var size = Number(text, "font-size");
        var width = Lettering.Width(text.Value, size, (string?)text.Attribute("font-weight") == "bold");
        var x = Number(text, "x");
        var left = (string?)text.Attribute("text-anchor") switch
        {
            "end" => x - width,
            "middle" => x - (width / 2),
            _ => x,
        };
        return (left, left + width, Number(text, "y"), size);
    }

    private static (double X, double Top, double Bottom) Trunk(string path)
    {
        var numbers = path.Split(['M', ' ', 'V'], StringSplitOptions.RemoveEmptyEntries).Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray();
        return (numbers[0], Math.Min(numbers[1], numbers[2]), Math.Max(numbers[1], numbers[2]));
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
