using System.Globalization;
using System.Text;
using DiagRules.Model.Problems;

namespace DiagRules.Packs.Text;

/// <summary>Finds what an editor does not show: control characters, tabs, and characters without width or that turn the direction of text.</summary>
internal static class HiddenCharacters
{
    private static readonly Dictionary<int, string> Names = new()
    {
        [0x00] = "NUL",
        [0x08] = "backspace",
        [0x0B] = "vertical tab",
        [0x0C] = "form feed",
        [0x1B] = "escape",
        [0x7F] = "delete",
        [0x85] = "next line",
        [0xAD] = "soft hyphen",
        [0x34F] = "combining grapheme joiner",
        [0x61C] = "Arabic letter mark",
        [0x115F] = "Hangul choseong filler",
        [0x1160] = "Hangul jungseong filler",
        [0x180E] = "Mongolian vowel separator",
        [0x200B] = "zero width space",
        [0x200C] = "zero width non-joiner",
        [0x200D] = "zero width joiner",
        [0x200E] = "left-to-right mark",
        [0x200F] = "right-to-left mark",
        [0x2028] = "line separator",
        [0x2029] = "paragraph separator",
        [0x202A] = "left-to-right embedding",
        [0x202B] = "right-to-left embedding",
        [0x202C] = "pop directional formatting",
        [0x202D] = "left-to-right override",
        [0x202E] = "right-to-left override",
        [0x2060] = "word joiner",
        [0x2066] = "left-to-right isolate",
        [0x2067] = "right-to-left isolate",
        [0x2068] = "first strong isolate",
        [0x2069] = "pop directional isolate",
        [0x3164] = "Hangul filler",
        [0xFEFF] = "byte order mark inside the text",
        [0xFFA0] = "halfwidth Hangul filler",
    };

    /// <summary>
    /// Reports them, and gives the text in which each is a space (places stay as they are), so that the rest of the file can be read in
    /// the same pass.
    /// </summary>
    public static SourceText Check(SourceText source, ProblemSink problems)
    {
        var text = source.Text;
        char[]? cleaned = null;
        var tabbedLine = 0;
        for (var i = 0; i < text.Length;)
        {
            var next = text.AsSpan(i).IndexOfAnyExceptInRange(' ', '~');
            if (next < 0)
            {
                break;
            }

            i += next;
            Rune.DecodeFromUtf16(text.AsSpan(i), out var rune, out var length);
            if (rune.Value == '\t')
            {
                tabbedLine = ReportTab(source, i, tabbedLine, problems);
            }
            else if (IsHidden(rune))
            {
                problems.Add(ProblemCatalogue.NotUtf8OrHiddenCharacter, source.At(i, length), $"'{Describe(rune)}' is not seen in an editor; take it out.");
            }
            else
            {
                i += length;
                continue;
            }

            cleaned ??= text.ToCharArray();
            cleaned.AsSpan(i, length).Fill(' ');
            i += length;
        }

        return cleaned is null ? source : new SourceText(source.Pack, source.File, new string(cleaned));
    }

    /// <summary>One problem a line is enough: a line indented by tabs holds many.</summary>
    private static int ReportTab(SourceText source, int offset, int tabbedLine, ProblemSink problems)
    {
        var (line, column) = source.LineAndColumn(offset);
        if (line != tabbedLine)
        {
            var shown = source.Line(line).ToString().Replace("\t", "<tab>", StringComparison.Ordinal).Trim();
            problems.Add(ProblemCatalogue.TabForIndenting, source.Place(line, column, 1), $"'{Excerpt.Of(shown)}' holds a tab; use spaces.");
        }

        return line;
    }

    private static bool IsHidden(Rune rune)
    {
        if (rune.Value is '\n' or '\r')
        {
            return false;
        }

        return Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator
            or UnicodeCategory.ParagraphSeparator
            || rune.Value is 0x34F or 0x115F or 0x1160 or 0x3164 or 0xFFA0 or (>= 0xFE00 and <= 0xFE0F) or (>= 0xE0000 and <= 0xE0FFF);
    }

    private static string Describe(Rune rune)
    {
        var name = Names.TryGetValue(rune.Value, out var known) ? known : Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.Control => "control character",
            UnicodeCategory.Format => "format character",
            _ => "character without a shape of its own",
        };
        return string.Create(CultureInfo.InvariantCulture, $"U+{rune.Value:X4} {name}");
    }
}
