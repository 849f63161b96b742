using DiagRules.Packs;

namespace DiagRules.TestSupport;

/// <summary>
/// Small packs as text. The place that a test is about is marked in the text itself, <c>«like this»</c>, so that no test counts lines.
/// </summary>
public sealed class PackText
{
    private const char Open = '«', Close = '»';

    /// <summary>The least head a pack can have.</summary>
    public const string Head = """
        format: 1
        pack: demo
        version: 1.0.0
        title: Demo lift

        """;

    private readonly List<(string Path, string Text)> _files = [];

    /// <summary>Where the mark stands, or <see langword="null"/> when there is none.</summary>
    public MarkedPlace? Mark { get; private set; }

    /// <summary>A pack of one file: the least head, and the sections given.</summary>
    public static PackText Of(string sections) => new PackText().With("pack.yaml", Head + sections);

    /// <summary>A pack with the head given.</summary>
    public static PackText WithHead(string packYaml) => new PackText().With("pack.yaml", packYaml);

    /// <summary>Adds a file; a mark in it is taken out and remembered.</summary>
    public PackText With(string path, string text)
    {
        _files.Add((path, TakeMark(path, text.ReplaceLineEndings("\n"))));
        return this;
    }

    /// <summary>The files for a loader.</summary>
    public PackFiles Files => PackFiles.FromText([.. _files]);

    /// <summary>Loads it.</summary>
    public PackLoadResult Load(PackLoaderOptions? options = null) => new PackLoader(options).Load(Files);

    private string TakeMark(string path, string text)
    {
        var open = text.IndexOf(Open, StringComparison.Ordinal);
        if (open < 0)
        {
            return text;
        }

        if (Mark is not null)
        {
            throw new ArgumentException("A pack takes one mark.", nameof(text));
        }

        var close = text.IndexOf(Close, open);
        if (close < 0)
        {
            throw new ArgumentException($"The mark is not closed with '{Close}'.", nameof(text));
        }

        var before = text[..open];
        var line = before.Count(sign => sign == '\n') + 1;
        var column = open - (before.LastIndexOf('\n') + 1) + 1;
        Mark = new MarkedPlace(path, line, column, close - open - 1);
        return before + text[(open + 1)..close] + text[(close + 1)..];
    }
}

/// <summary>A place marked in a text.</summary>
/// <param name="File">Path of the file.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
/// <param name="Length">Characters within the mark.</param>
public sealed record MarkedPlace(string File, int Line, int Column, int Length);
