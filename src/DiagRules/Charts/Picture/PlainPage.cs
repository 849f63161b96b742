using System.Globalization;
using System.Text;

namespace DiagRules.Charts.Picture;

/// <summary>Writes wrapped, indented plain text.</summary>
internal sealed class PlainPage(int width)
{
    private readonly StringBuilder _text = new();

    /// <summary>A blank line; never two of them, and none at the beginning.</summary>
    public void Blank()
    {
        if (_text.Length > 0 && !_text.ToString(Math.Max(0, _text.Length - 2), Math.Min(2, _text.Length)).EndsWith("\n\n", StringComparison.Ordinal))
        {
            _text.Append('\n');
        }
    }

    /// <summary>A line across the page.</summary>
    public void Rule() => _text.Append('-', width).Append('\n');

    /// <summary>A text whose first line follows a label and whose other lines begin below its own start; nothing at all without a text.</summary>
    public void Item(int indent, string label, int labelWidth, string text)
    {
        if (text.Length == 0)
        {
            return;
        }

        var edge = indent + labelWidth;
        var lead = new string(' ', indent) + label + new string(' ', label.Length == 0 ? labelWidth : Math.Max(labelWidth - (int)Columns(label), 1));
        foreach (var line in Wrap(text, Math.Max(width - Math.Max(edge, lead.Length), 10), Columns))
        {
            _text.Append((lead + line).TrimEnd()).Append('\n');
            lead = new string(' ', edge);
        }
    }

    /// <summary>A paragraph.</summary>
    public void Text(int indent, string text) => Item(indent, "", 0, text);

    /// <summary>A line as it is, however long.</summary>
    public void Verbatim(string line) => _text.Append(line.TrimEnd()).Append('\n');

    public override string ToString() => _text.ToString();

    /// <summary>Breaks a text into lines at its spaces, and words that are longer than a line wherever the line ends.</summary>
    /// <param name="text">The text; line breaks in it count as spaces.</param>
    /// <param name="room">What a line may measure.</param>
    /// <param name="measure">Measures a text.</param>
    public static IEnumerable<string> Wrap(string text, double room, Func<string, double> measure)
    {
        var line = "";
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, room, measure)))
        {
            if (line.Length > 0 && measure(line + " " + word) > room)
            {
                yield return line;
                line = "";
            }

            line = line.Length == 0 ? word : line + " " + word;
        }

        if (line.Length > 0)
        {
            yield return line;
        }
    }

    private static double Columns(string text) => new StringInfo(text).LengthInTextElements;

    private static IEnumerable<string> Pieces(string word, double room, Func<string, double> measure)
    {
        if (measure(word) <= room)
        {
            return [word];
        }

        var pieces = new List<string>();
        var piece = "";
        var elements = StringInfo.GetTextElementEnumerator(word);
        while (elements.MoveNext())
        {
            var element = elements.GetTextElement();
            if (piece.Length > 0 && measure(piece + element) > room)
            {
                pieces.Add(piece);
                piece = "";
            }

            piece += element;
        }

        return [.. pieces, piece];
    }
}
