namespace DiagRules.Packs.Files;

/// <summary>The files of a pack in a folder. Links are not followed: they may lead out of the pack.</summary>
internal sealed class FolderFiles : PackFiles
{
    private const string Pattern = "*.yaml";
    private readonly string _folder;
    private readonly List<string> _paths = [];
    private readonly List<string> _refused = [];
    private readonly List<string> _overlooked = [];

    public FolderFiles(string folder)
    {
        Name = folder;
        _folder = Path.GetFullPath(folder);
        if (Directory.Exists(_folder))
        {
            Collect(new DirectoryInfo(_folder), "");
        }

        _paths.Sort(StringComparer.Ordinal);
        _refused.Sort(StringComparer.Ordinal);
        _overlooked.Sort(StringComparer.Ordinal);
    }

    public override string Name { get; }

    public override IReadOnlyList<string> Paths => _paths;

    public override IReadOnlyList<string> Refused => _refused;

    public override IReadOnlyList<string> Overlooked => _overlooked;

    public override string Display(string path)
    {
        var folder = Name.Replace('\\', '/').TrimEnd('/');
        return folder.Length == 0 ? (Name.Length == 0 ? path : "/" + path) : folder is "." ? path : $"{folder}/{path}";
    }

    public override byte[] Read(string path, int limit)
    {
        using var file = File.OpenRead(Path.Combine(_folder, path));
        var buffer = new byte[Math.Min(file.Length, limit + 1L)];
        var read = file.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        return read == buffer.Length ? buffer : buffer[..read];
    }

    private void Collect(DirectoryInfo folder, string prefix)
    {
        foreach (var entry in Entries(folder, prefix))
        {
            var path = prefix + entry.Name;
            if (entry.Name.StartsWith('.') || IsBuildOutput(folder, prefix, entry))
            {
                continue;
            }

            if (entry.LinkTarget is not null)
            {
                if (entry is DirectoryInfo || IsYaml(entry))
                {
                    _refused.Add(path);
                }
            }
            else if (entry is DirectoryInfo inner)
            {
                Collect(inner, path + "/");
            }
            else if (IsYaml(entry))
            {
                _paths.Add(path);
            }
            else if (entry.Name.EndsWith(".yml", StringComparison.OrdinalIgnoreCase))
            {
                _overlooked.Add(path);
            }
        }
    }

    /// <summary>A folder that cannot be listed counts as a file that cannot be read, and is reported as one.</summary>
    private FileSystemInfo[] Entries(DirectoryInfo folder, string prefix)
    {
        try
        {
            return folder.GetFileSystemInfos();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            _paths.Add(prefix.Length == 0 ? "pack.yaml" : prefix);
            return [];
        }
    }

    private static bool IsYaml(FileSystemInfo entry) => entry.Name.EndsWith(Pattern[1..], StringComparison.Ordinal);

    /// <summary>A pack may be a project: what a build writes beside the project file holds copies of packs, and is not the pack.</summary>
    private static bool IsBuildOutput(DirectoryInfo folder, string prefix, FileSystemInfo entry) =>
        prefix.Length == 0 && entry is DirectoryInfo && entry.Name is "bin" or "obj" && folder.EnumerateFiles("*.*proj").Any();
}
