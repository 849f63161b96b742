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

    /// <summary>The sections of a small pack that raises no problem of any kind.</summary>
    public const string DemoSections = """
        systems: { supply: Supply, motor: Motor }
        readings:
          fuse-feed: { question: Volts before the pump fuse, unit: V, plausible: 0 V .. 32 V }
          fuse-load: { question: Volts behind the pump fuse, unit: V, plausible: 0 V .. 32 V }
          fuse-drop: { from: fuse-feed - fuse-load }
        findings:
          pump-fuse:
            title: Pump fuse
            grades: [whole, blown]
            read: { whole: fuse-feed >= 11 V and fuse-drop <= 0.3 V, blown: fuse-feed >= 11 V and fuse-load < 1 V }
            background: { blown: 0.002 }
          pump-sound:
            question: What do you hear from the pump?
            grades: [runs, clicks, silent]
            background: { clicks: 0.01, silent: 0.01 }
        causes:
          fuse-fatigued: { title: Fuse broken from age, system: supply, share: 4, shows: { pump-fuse: { blown: 0.98 }, pump-sound: { silent: 0.9 } }, repair: renew-fuse }
          brushes-worn: { title: Brushes worn, system: motor, share: 5, shows: { pump-sound: { clicks: 0.8 } }, repair: renew-brushes }
          motor-seized: { title: Motor seized, system: motor, share: 3, shows: { pump-sound: { clicks: 0.2, silent: 0.5 } }, repair: exchange-motor }
        checks:
          measure-fuse: { title: Measure both ends of the fuse, gives: [fuse-feed, fuse-load], minutes: 4, needs: [cover-off] }
        access:
          cover-off: { title: Cover off, minutes: 3 }
        repairs:
          renew-fuse: { title: Renew the fuse, minutes: 5, verify-by: [measure-fuse] }
          renew-brushes: { title: Renew the brushes, minutes: 60, verify-by: [pump-sound] }
          exchange-motor: { title: Exchange the motor, minutes: 90, verify-by: [pump-sound] }

        """;

    private readonly List<(string Path, string Text)> _files = [];
    private readonly List<PackFiles> _bases = [];

    /// <summary>Where the mark stands, or <see langword="null"/> when there is none.</summary>
    public MarkedPlace? Mark { get; private set; }

    /// <summary>A pack of one file: the least head, and the sections given.</summary>
    public static PackText Of(string sections) => new PackText().With("pack.yaml", Head + sections);

    /// <summary>The small pack without problems, with pieces of its text replaced; each piece must be there.</summary>
    public static PackText Demo(params ReadOnlySpan<(string Old, string New)> changes)
    {
        var text = Head + DemoSections;
        foreach (var (old, changed) in changes)
        {
            var at = text.IndexOf(old, StringComparison.Ordinal);
            text = at < 0 ? throw new ArgumentException($"The pack holds no '{old}'.", nameof(changes)) : text[..at] + changed + text[(at + old.Length)..];
        }

        return WithHead(text);
    }

    /// <summary>A pack with the head given.</summary>
    public static PackText WithHead(string packYaml) => new PackText().With("pack.yaml", packYaml);

    /// <summary>Adds a file; a mark in it is taken out and remembered.</summary>
    public PackText With(string path, string text)
    {
        _files.Add((path, TakeMark(path, text.ReplaceLineEndings("\n"))));
        return this;
    }

    /// <summary>Names packs that this one may build on; problems show their files as <c>base-1/pack.yaml</c> and so on.</summary>
    public PackText Over(params ReadOnlySpan<PackText> bases)
    {
        foreach (var pack in bases)
        {
            _bases.Add(PackFiles.FromText($"base-{_bases.Count + 1}", [.. pack._files]));
        }

        return this;
    }

    /// <summary>The files for a loader.</summary>
    public PackFiles Files => PackFiles.FromText([.. _files]);

    /// <summary>Loads it.</summary>
    public PackLoadResult Load(PackLoaderOptions? options = null)
    {
        options ??= new PackLoaderOptions();
        options.Bases = [.. options.Bases, .. _bases];
        return new PackLoader(options).Load(Files);
    }

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
