using DiagRules.Model.Problems;

namespace DiagRules.Packs.Text;

/// <summary>The text of one file, with what is needed to name places in it.</summary>
internal sealed class SourceText
{
    private readonly int[] _lineStarts;

    public SourceText(string pack, string file, string text)
    {
        Pack = pack;
        File = file;
        Text = text;
        _lineStarts = FindLineStarts(text);
    }

    public string Pack { get; }

    /// <summary>The path as problems show it.</summary>
    public string File { get; }

    public string Text { get; }

    public SourcePlace Whole => new(Pack, File, 0, 0);

    public SourcePlace Place(long line, long column, int length = 0) => new(Pack, File, (int)line, (int)column, length);

    public SourcePlace At(int offset, int length = 0)
    {
        var (line, column) = LineAndColumn(offset);
        return Place(line, column, length);
    }

    public (int Line, int Column) LineAndColumn(int offset)
    {
        var found = Array.BinarySearch(_lineStarts, offset);
        var line = found >= 0 ? found : ~found - 1;
        return (line + 1, offset - _lineStarts[line] + 1);
    }

    /// <summary>A line without its break; empty beyond the end.</summary>
    public ReadOnlySpan<char> Line(int line)
    {
        if (line < 1 || line > _lineStarts.Length)
        {
            return [];
        }

        var start = _lineStarts[line - 1];
        var end = line < _lineStarts.Length ? _lineStarts[line] : Text.Length;
        return Text.AsSpan(start, end - start).TrimEnd("\r\n");
    }

    public int LineCount => _lineStarts.Length;

    /// <summary>Line breaks are those of YAML 1.1 that this format lets through: LF, CR LF and CR.</summary>
    private static int[] FindLineStarts(string text)
    {
        var starts = new List<int> { 0 };
        for (var at = text.AsSpan().IndexOfAny('\r', '\n'); at >= 0;)
        {
            at += text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1;
            starts.Add(at);
            var next = text.AsSpan(at).IndexOfAny('\r', '\n');
            at = next < 0 ? -1 : at + next;
        }

        return [.. starts];
    }
}
