using System.Globalization;
using System.Text;

namespace DiagRules.Charts.Picture;

/// <summary>How wide a text will be, and how it is written into XML.</summary>
/// <remarks>
/// Widths are those of Helvetica, to which Arial and Liberation Sans are metric-compatible (Adobe Core 14 AFM files, thousandths of the size), with a
/// margin for wider stand-ins. Letters outside ASCII count as wide as a capital, ideographs and symbols as their size.
/// </remarks>
internal static class Lettering
{
    public const string Family = "Arial, 'Liberation Sans', Helvetica, sans-serif";

    /// <summary>Room for a stand-in font and for bold letters.</summary>
    private const double Margin = 1.1, BoldMargin = 1.08;

    // From the space to the tilde.
    private static readonly short[] Ascii =
    [
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
    ];

    /// <summary>Estimated width of a text in the unit of its size.</summary>
    public static double Width(string text, double size, bool isBold = false)
    {
        double thousandths = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            thousandths += rune.Value is >= ' ' and <= '~' ? Ascii[rune.Value - ' '] : rune.Value < 0x2000 ? 722 : 1000;
        }

        return thousandths / 1000 * size * Margin * (isBold ? BoldMargin : 1);
    }

    /// <summary>Lines of at most <paramref name="room"/>.</summary>
    public static IEnumerable<string> Wrap(string text, double room, double size, bool isBold = false) =>
        PlainPage.Wrap(Clean(text), room, line => Width(line, size, isBold));

    /// <summary>A text for XML and HTML, in an element or in a quoted attribute.</summary>
    public static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var letter in Clean(text))
        {
            _ = letter switch
            {
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '&' => escaped.Append("&amp;"),
                '"' => escaped.Append("&quot;"),
                '\'' => escaped.Append("&#39;"),
                _ => escaped.Append(letter),
            };
        }

        return escaped.ToString();
    }

    /// <summary>A number for SVG: two decimals at most, with a point.</summary>
    public static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Takes out what XML cannot hold, and signs that turn the direction of the text around them.</summary>
    private static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            var isSpace = rune.Value is '\t' or '\n' or '\r';
            var isBarred = Rune.IsControl(rune) || rune.Value is 0xFFFE or 0xFFFF or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);
            clean.Append(isSpace ? " " : isBarred ? "\uFFFD" : rune.ToString());
        }

        return clean.ToString();
    }
}
