namespace DiagRules.Packs;

/// <summary>The files of one pack, wherever they come from.</summary>
public abstract class PackFiles
{
    /// <summary>How problems name the pack before its id is known: the folder as the caller gave it, or a name.</summary>
    public abstract string Name { get; }

    /// <summary>Every <c>*.yaml</c> of the pack; paths are relative to it, with forward slashes, in ordinal order.</summary>
    public abstract IReadOnlyList<string> Paths { get; }

    /// <summary>Paths of links, which are refused since they may lead out of the pack; none by default.</summary>
    public virtual IReadOnlyList<string> Refused => [];

    /// <summary>Paths of files that look like part of the pack and are not read, since their name ends in <c>.yml</c>; none by default.</summary>
    public virtual IReadOnlyList<string> Overlooked => [];

    /// <summary>How a problem shows a path.</summary>
    public abstract string Display(string path);

    /// <summary>The bytes of a file, at most <paramref name="limit"/> + 1 of them.</summary>
    public abstract byte[] Read(string path, int limit);

    /// <summary>The files of a folder; files and folders whose name begins with a point are no part of the pack.</summary>
    /// <param name="folder">The folder; problems show it as it is given here. A folder that is not there has no files.</param>
    public static PackFiles FromFolder(string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        return new Files.FolderFiles(folder);
    }

    /// <summary>Files given as text, for tests and for hosts that keep packs in a store.</summary>
    /// <param name="files">Relative path (<c>pack.yaml</c>, <c>cases/first.yaml</c>) and text.</param>
    public static PackFiles FromText(params (string Path, string Text)[] files) => new TextFiles("pack", "", files);

    /// <summary>Files given as text, of one pack among others.</summary>
    /// <param name="name">Stands before the paths in problems, with a slash.</param>
    /// <param name="files">Relative path and text.</param>
    public static PackFiles FromText(string name, params (string Path, string Text)[] files)
    {
        ArgumentNullException.ThrowIfNull(name);
        return new TextFiles(name, name + "/", files);
    }

    private sealed class TextFiles(string name, string prefix, (string Path, string Text)[] files) : PackFiles
    {
        private readonly SortedDictionary<string, string> _texts =
            new(files.ToDictionary(file => file.Path, file => file.Text, StringComparer.Ordinal), StringComparer.Ordinal);

        public override string Name => name;

        public override IReadOnlyList<string> Paths => [.. _texts.Keys];

        public override string Display(string path) => prefix + path;

        public override byte[] Read(string path, int limit) => System.Text.Encoding.UTF8.GetBytes(_texts[path]);
    }
}
