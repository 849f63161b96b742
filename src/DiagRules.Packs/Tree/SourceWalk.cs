using YamlDotNet.Core;

namespace DiagRules.Packs.Tree;

/// <summary>Walks the source of one scalar alongside its value and notes for each character of the value the offset it came from.</summary>
/// <param name="text">The text of the file.</param>
/// <param name="start">Offset of the scalar: behind its opening quote, or at the <c>|</c> or <c>&gt;</c> of a block.</param>
/// <param name="style">How the scalar is written.</param>
internal sealed class SourceWalk(string text, int start, ScalarStyle style)
{
    private int _at = start;

    public int[] Map(string value)
    {
        var isBlock = style is ScalarStyle.Literal or ScalarStyle.Folded;
        var indent = isBlock ? EnterBlock(value) : 0;
        var map = new int[value.Length];
        for (var i = 0; i < value.Length; i++)
        {
            if (value[i] is '\n' or ' ' && IsAtBreak())
            {
                map[i] = Math.Min(_at, text.Length);
                CrossBreak(value, i, isBlock, indent);
                continue;
            }

            SkipJoinedLines();
            map[i] = Math.Min(_at, text.Length);
            _at += SourceLength(value, ref i, map);
        }

        return map;
    }

    /// <summary>Skips the header line and gives the indentation of the block.</summary>
    private int EnterBlock(string value)
    {
        _at = NextLine(_at);
        var line = _at;
        while (line < text.Length && IsBlank(line))
        {
            line = NextLine(line);
        }

        // Spaces that the value keeps belong to the text, not to the indentation.
        var kept = value.AsSpan().TrimStart('\n');
        var indent = Math.Max(0, CountSpaces(line) - (kept.Length - kept.TrimStart(' ').Length));
        _at += Math.Min(indent, CountSpaces(_at));
        return indent;
    }

    private bool IsBlank(int line)
    {
        var end = line + CountSpaces(line);
        return end < text.Length && text[end] is '\r' or '\n';
    }

    private bool IsAtBreak()
    {
        var at = _at;
        while (at < text.Length && text[at] == ' ')
        {
            at++;
        }

        return at >= text.Length || text[at] is '\r' or '\n';
    }

    /// <summary>
    /// One break and the indentation behind it; of folded lines also the break that folding swallowed, unless the next character of the
    /// value is that of the next empty line.
    /// </summary>
    private void CrossBreak(string value, int i, bool isBlock, int indent)
    {
        var nextIsBreak = i + 1 < value.Length && value[i + 1] == '\n';
        SkipLine(isBlock ? indent : int.MaxValue);
        if (style == ScalarStyle.Literal || nextIsBreak)
        {
            return;
        }

        while (_at < text.Length && text[_at] is '\r' or '\n')
        {
            SkipLine(isBlock ? indent : int.MaxValue);
        }
    }

    private void SkipLine(int indent)
    {
        _at = NextLine(_at);
        _at += Math.Min(indent, CountSpaces(_at));
    }

    /// <summary>A backslash at the end of a line of double-quoted text joins it with the next.</summary>
    private void SkipJoinedLines()
    {
        while (style == ScalarStyle.DoubleQuoted && _at + 1 < text.Length && text[_at] == '\\' && text[_at + 1] is '\r' or '\n')
        {
            SkipLine(int.MaxValue);
        }
    }

    /// <summary>How much source the present character takes: two quotes for one, an escape, or itself.</summary>
    private int SourceLength(string value, ref int i, int[] map)
    {
        if (style == ScalarStyle.SingleQuoted && value[i] == '\'')
        {
            return 2;
        }

        if (style != ScalarStyle.DoubleQuoted || _at + 1 >= text.Length || text[_at] != '\\')
        {
            return 1;
        }

        if (char.IsHighSurrogate(value[i]) && i + 1 < value.Length)
        {
            map[++i] = _at;
        }

        return text[_at + 1] switch { 'x' => 4, 'u' => 6, 'U' => 10, _ => 2 };
    }

    private int NextLine(int from)
    {
        var end = from >= text.Length ? -1 : text.AsSpan(from).IndexOfAny('\r', '\n');
        if (end < 0)
        {
            return text.Length;
        }

        var at = from + end;
        return at + (text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1);
    }

    private int CountSpaces(int from)
    {
        var at = from;
        while (at < text.Length && text[at] == ' ')
        {
            at++;
        }

        return at - from;
    }
}
