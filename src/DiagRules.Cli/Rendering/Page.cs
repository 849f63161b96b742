using System.Globalization;

namespace DiagRules.Cli.Rendering;

/// <summary>Writes wrapped, indented text. Blank lines never pile up, and the first line is never blank.</summary>
internal sealed class Page(TextWriter writer, int width, bool hasColour)
{
    private const string NoBreak = "\u00a0";

    private bool _hasText;
    private bool _wantsBlank;

    /// <summary>A page on what a command writes to.</summary>
    public Page(Terminal terminal)
        : this(terminal.Out, terminal.Width, terminal.HasColour)
    {
    }

    /// <summary>Columns a line may fill.</summary>
    public int Width { get; } = width;

    /// <summary>Joins words that may not be parted at the end of a line: <c>12</c> and <c>minutes</c>.</summary>
    public static string Together(string text) => text.Replace(" ", NoBreak, StringComparison.Ordinal);

    /// <summary>Leaves a blank line before whatever comes next.</summary>
    public void Blank() => _wantsBlank = _hasText;

    /// <summary>A heading, after a blank line.</summary>
    public void Heading(string text)
    {
        Blank();
        Item(0, "", 0, text, Ink.Strong, Ink.Strong);
    }

    /// <summary>A line across the page.</summary>
    public void Rule() => Write(new string('-', Width));

    /// <summary>A paragraph, every line of it indented alike.</summary>
    public void Text(int indent, string text, Ink ink = Ink.Plain) => Item(indent, "", 0, text, Ink.Plain, ink);

    /// <summary>Lines to copy: not wrapped, since a break would change what they mean.</summary>
    public void Verbatim(int indent, string text)
    {
        foreach (var line in text.Split('\n'))
        {
            Write(new string(' ', indent) + line);
        }
    }

    /// <summary>A label, and a text beside it that keeps its own left edge on all its lines; nothing at all without a text.</summary>
    /// <param name="indent">Columns before the label.</param>
    /// <param name="label">The label.</param>
    /// <param name="labelWidth">Columns kept for the label; a longer one pushes its own first line to the right.</param>
    /// <param name="text">The text.</param>
    /// <param name="labelInk">How the label stands out.</param>
    /// <param name="textInk">How the text stands out.</param>
    public void Item(int indent, string label, int labelWidth, string text, Ink labelInk = Ink.Plain, Ink textInk = Ink.Plain)
    {
        if (text.Length == 0)
        {
            return;
        }

        var edge = indent + labelWidth;
        var gap = label.Length == 0 ? labelWidth : Math.Max(labelWidth - Columns(label), 1);
        var first = indent + Columns(label) + gap;
        var lead = new string(' ', indent) + Paint(label, labelInk) + new string(' ', gap);
        foreach (var line in Wrap(text, Width - first, Width - edge))
        {
            Write(lead + Paint(line, textInk));
            lead = new string(' ', edge);
        }
    }

    /// <summary>Breaks text into lines at its spaces; a word longer than a line gets a line of its own.</summary>
    internal static IEnumerable<string> Wrap(string text, int firstWidth, int otherWidth)
    {
        var line = "";
        var room = firstWidth;
        foreach (var word in text.Replace(" %", NoBreak + "%", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && Columns(line) + 1 + Columns(word) > room)
            {
                yield return Finish(line);
                line = "";
                room = otherWidth;
            }

            line = line.Length == 0 ? word : line + " " + word;
        }

        yield return Finish(line);
    }

    private static string Finish(string line) => line.Replace(NoBreak, " ", StringComparison.Ordinal);

    private static int Columns(string text) => new StringInfo(text).LengthInTextElements;

    private void Write(string line)
    {
        if (_wantsBlank)
        {
            writer.WriteLine();
        }

        writer.WriteLine(line.TrimEnd());
        _wantsBlank = false;
        _hasText = true;
    }

    private string Paint(string text, Ink ink)
    {
        var code = ink switch
        {
            _ when !hasColour || text.Length == 0 => null,
            Ink.Strong => "1",
            Ink.Faint => "2",
            Ink.Danger => "1;97;41",
            Ink.Warning => "1;30;48;5;208",
            Ink.Caution => "1;30;103",
            Ink.Notice => "1;97;44",
            _ => null,
        };
        return code is null ? text : $"\u001b[{code}m{text}\u001b[0m";
    }
}
