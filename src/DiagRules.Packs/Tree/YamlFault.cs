using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using YamlDotNet.Core;

namespace DiagRules.Packs.Tree;

/// <summary>Words for what the YAML parser stumbled over: the line with a mark at the place, and the usual cause.</summary>
internal static class YamlFault
{
    private const int Window = 76;
    private const string Indent = "    ";

    /// <summary>The parser's own place where it gives one; it is off for some faults, and no exception of another kind has one.</summary>
    public static SourcePlace Place(SourceText source, Exception exception, SourcePlace last)
    {
        if (exception is not YamlException { Start: { Line: > 0 } start } || start is { Line: 1, Column: 1 } && last.Line > 1)
        {
            return last;
        }

        var line = (int)Math.Min(start.Line, source.LineCount);
        return source.Place(line, Math.Min(start.Column, source.Line(line).Length + 1));
    }

    /// <summary>One sentence, then the line with a caret below the place.</summary>
    public static string Describe(SourceText source, Exception exception, SourcePlace last)
    {
        var place = Place(source, exception, last);
        var line = source.Line(place.Line).ToString();
        var at = Math.Clamp(place.Column - 1, 0, line.Length);
        return $"'{Excerpt.Of(line.Trim())}' cannot be read as YAML; {UsualCause(source, place, line, at)}.{Detail(exception)}\n{Marked(line, at)}";
    }

    private static string Marked(string line, int at)
    {
        var from = Math.Clamp(at - (Window / 2), 0, Math.Max(0, line.Length - Window));
        var to = Math.Min(line.Length, from + Window);
        var before = from > 0 ? "... " : "";
        var after = to < line.Length ? " ..." : "";
        return $"{Indent}{before}{line[from..to]}{after}\n{Indent}{new string(' ', before.Length + at - from)}^";
    }

    private static string UsualCause(SourceText source, SourcePlace place, string line, int at)
    {
        var rest = line.AsSpan(at);
        if (rest.Length > 0 && rest[0] is '%' or '@' or '`' or '!' or '&' or '*' or '|' or '>')
        {
            return $"text that begins with '{rest[0]}' must stand in quotes";
        }

        if (rest.StartsWith("\"") || rest.StartsWith("'"))
        {
            return "expected the end of the quoted text: a quotation mark is not closed, or text follows behind it";
        }

        if (rest.StartsWith(":") && line.AsSpan(0, at).Contains(':'))
        {
            return "text that holds ': ' must stand in quotes";
        }

        var opened = OpenBracket(source, place);
        return opened is { } bracket
            ? $"expected ',' or '{(bracket.Sign == '[' ? ']' : '}')}' for the '{bracket.Sign}' of line {bracket.Line}"
            : "expected a key with ': ' behind it, or a list item with '- ' before it, indented like its neighbours";
    }

    /// <summary>The innermost bracket still open before a place; quotes and comments are looked at only as far as one line reaches.</summary>
    private static (char Sign, int Line)? OpenBracket(SourceText source, SourcePlace place)
    {
        var open = new Stack<(char Sign, int Line)>();
        for (var number = 1; number <= place.Line; number++)
        {
            var line = source.Line(number);
            line = number == place.Line ? line[..Math.Clamp(place.Column - 1, 0, line.Length)] : line;
            var quote = '\0';
            for (var i = 0; i < line.Length; i++)
            {
                quote = Step(line, i, number, quote, open);
                if (quote == '#')
                {
                    break;
                }
            }
        }

        return open.TryPeek(out var last) ? last : null;
    }

    /// <summary>The quotation mark in force after one character; <c>#</c> where a comment begins.</summary>
    private static char Step(ReadOnlySpan<char> line, int i, int number, char quote, Stack<(char Sign, int Line)> open)
    {
        var sign = line[i];
        if (quote != '\0')
        {
            return sign == quote ? '\0' : quote;
        }

        var isFirst = i == 0 || line[i - 1] is ' ' or '[' or '{' or ',';
        switch (sign)
        {
            case '[' or '{' when isFirst || open.Count > 0:
                open.Push((sign, number));
                break;
            case ']' or '}' when open.Count > 0:
                open.Pop();
                break;
            case '"' or '\'' or '#' when isFirst:
                return sign;
        }

        return '\0';
    }

    private static string Detail(Exception exception) =>
        exception is YamlException ? $" ({exception.Message.TrimEnd('.')}.)" : "";
}
