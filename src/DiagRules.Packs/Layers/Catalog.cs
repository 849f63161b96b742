using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Layers;

/// <summary>The packs that others may build on, by id and version.</summary>
internal sealed class Catalog
{
    private const string HeadFile = "pack.yaml";
    private const int Levels = 4;

    private readonly ILookup<string, CatalogPack> _packs;

    public Catalog(PackLoaderOptions options)
    {
        var files = options.Bases.Concat(options.SearchFolders.SelectMany(folder => Folders(folder, Levels)).Select(PackFiles.FromFolder));
        _packs = files.Select(pack => Look(pack, options.Limits)).OfType<CatalogPack>()
            .OrderByDescending(pack => pack.Version)
            .ThenBy(pack => pack.Files.Name, StringComparer.Ordinal)
            .ToLookup(pack => pack.Id, StringComparer.Ordinal);
    }

    public IEnumerable<string> Ids => _packs.Select(pack => pack.Key);

    /// <summary>The packs of an id, newest first.</summary>
    public IEnumerable<CatalogPack> Of(string id) => _packs[id];

    private static IEnumerable<string> Folders(string folder, int levels)
    {
        if (File.Exists(Path.Combine(folder, HeadFile)))
        {
            return [folder];
        }

        return levels == 0 || !Directory.Exists(folder)
            ? []
            : Directory.EnumerateDirectories(folder)
                .Where(inner => !Path.GetFileName(inner).StartsWith('.') && new DirectoryInfo(inner).LinkTarget is null)
                .Order(StringComparer.Ordinal)
                .SelectMany(inner => Folders(inner, levels - 1));
    }

    /// <summary>A pack that does not say its id and version plainly is no base; whoever loads it by itself is told why.</summary>
    private static CatalogPack? Look(PackFiles files, PackLimits limits)
    {
        var ignored = new ProblemSink();
        if (!files.Paths.Contains(HeadFile, StringComparer.Ordinal)
            || new FileReader(files, "", limits).Read(HeadFile, ignored) is not { } source
            || TreeReader.Read(source, limits, ignored) is not [{ Root: MapNode head }, ..])
        {
            return null;
        }

        return head.Find("pack")?.Value is ScalarNode id && head.Find("version")?.Value is ScalarNode version && SemanticVersion.Parse(version.Value) is { } parsed
            ? new CatalogPack(id.Value, parsed, files)
            : null;
    }
}

/// <summary>A pack that others may build on.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Version">Its version.</param>
/// <param name="Files">Its files.</param>
internal sealed record CatalogPack(string Id, SemanticVersion Version, PackFiles Files);
