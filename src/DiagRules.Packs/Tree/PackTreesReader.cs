using System.Text.RegularExpressions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tree;

/// <summary>Reads all files of a pack into trees and holds them against the table of keys.</summary>
internal sealed partial class PackTreesReader
{
    private const string HeadFile = "pack.yaml";
    private const string CaseFolder = "cases/";

    private readonly PackFiles _files;
    private readonly PackLimits _limits;
    private readonly FileReader _reader;
    private readonly PackTrees _pack;
    private readonly List<MapNode> _maps = [];

    private PackTreesReader(PackFiles files, PackLimits limits)
    {
        _files = files;
        _limits = limits;
        _pack = new PackTrees { Id = PeekId(files, limits) };
        _reader = new FileReader(files, _pack.Id, limits);
    }

    public static PackTrees Read(PackFiles files, PackLimits limits)
    {
        var reader = new PackTreesReader(files, limits);
        reader.ReadAll();
        return reader._pack;
    }

    private void ReadAll()
    {
        var paths = _files.Paths;
        if (!paths.Contains(HeadFile, StringComparer.Ordinal))
        {
            _pack.Problems.Add(
                ProblemCatalogue.NoPackFile,
                new(_pack.Id, _files.Display(HeadFile), 0, 0),
                $"'{_files.Name}' is no pack: it has no readable 'pack.yaml', which says what the pack is.");
            _pack.IsComplete = false;
            return;
        }

        foreach (var path in paths.Order(StringComparer.Ordinal))
        {
            ReadFile(path);
        }

        CheckShapes();
        foreach (var path in _files.Overlooked)
        {
            _pack.Problems.Add(
                ProblemCatalogue.NoEntries,
                new(_pack.Id, _files.Display(path), 0, 0),
                $"'{path}' is not read: the files of a pack end in '.yaml'.");
        }

        foreach (var path in _files.Refused)
        {
            _pack.Problems.Add(
                ProblemCatalogue.PathLeavesPack, new(_pack.Id, _files.Display(path), 0, 0), $"'{path}' is a link; put the file itself into the pack's folder.");
            _pack.IsComplete = false;
        }
    }

    private void ReadFile(string path)
    {
        if (path.StartsWith(CaseFolder, StringComparison.Ordinal))
        {
            if (Documents(path, _pack.CaseProblems) is { } cases)
            {
                _pack.Cases.AddRange(cases);
            }
        }
        else if (Documents(path, _pack.Problems) is not { } documents)
        {
            _pack.IsComplete = false;
        }
        else if (SingleMap(path, documents) is { } map)
        {
            TakeIn(path, map);
        }
    }

    /// <summary>Held against the table of keys when all is read: whether the pack builds on others stands in one file and counts in all.</summary>
    private void CheckShapes()
    {
        var check = new ShapeCheck(_pack.Problems, _pack.IsLayer);
        foreach (var map in _maps)
        {
            check.CheckShape(map, map == _pack.Head ? FileShapes.PackFile : FileShapes.SectionFile);
        }
    }

    private List<Document>? Documents(string path, ProblemSink problems)
    {
        var before = problems.Count;
        if (_reader.Read(path, problems) is not { } source)
        {
            return null;
        }

        // Tabs and hidden characters damage every document of their file.
        var isDamaged = problems.Count > before;
        var documents = TreeReader.Read(source, _limits, problems)?.Select(document => document with { IsDamaged = document.IsDamaged || isDamaged }).ToList();
        if (documents is { Count: 0 } && path != HeadFile)
        {
            problems.Add(ProblemCatalogue.NoEntries, source.Whole, $"'{path}' holds no entries.");
        }

        return documents;
    }

    private MapNode? SingleMap(string path, List<Document> documents)
    {
        if (documents.Count > 1)
        {
            var second = documents[1].Root.Place;
            _pack.Problems.Add(
                ProblemCatalogue.SeveralDocuments,
                second,
                $"'{path}' has a second document that begins here; only files of cases hold several, so put it into a file of its own.");
        }

        if (documents is [{ Root: MapNode map }, ..])
        {
            return map;
        }

        if (documents is [{ Root: var other }, ..])
        {
            _pack.Problems.Add(
                ProblemCatalogue.WrongKindOfValue,
                other.Place,
                $"'{path}' begins with {other.Kind}; expected is a map of sections, such as 'findings:'.");
            _pack.IsComplete = false;
        }

        return path == HeadFile ? new MapNode(new(_pack.Id, _files.Display(path), 1, 1), []) : null;
    }

    private void TakeIn(string path, MapNode map)
    {
        _maps.Add(map);
        var isHead = path == HeadFile;
        if (isHead)
        {
            _pack.Head = map;
        }

        foreach (var (key, value) in map.Pairs)
        {
            if (value is MapNode section && FileShapes.SectionFile.Find(key.Value) is not null)
            {
                SectionOf(key.Value).AddRange(section.Pairs);
            }
        }

        if (!isHead && map.Pairs.Count == 0)
        {
            _pack.Problems.Add(ProblemCatalogue.NoEntries, map.Place, $"'{path}' holds no entries.");
        }
    }

    private List<MapPair> SectionOf(string name)
    {
        if (!_pack.Sections.TryGetValue(name, out var pairs))
        {
            _pack.Sections.Add(name, pairs = []);
        }

        return pairs;
    }

    /// <summary>The id is part of every place, so it is looked for before anything is read.</summary>
    private static string PeekId(PackFiles files, PackLimits limits)
    {
        if (!files.Paths.Contains(HeadFile, StringComparer.Ordinal))
        {
            return "";
        }

        try
        {
            var text = System.Text.Encoding.UTF8.GetString(files.Read(HeadFile, limits.FileBytes));
            return IdLine().Match(text).Groups[1].Value;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return "";
        }
    }

    [GeneratedRegex("""^\uFEFF?pack:[ ]+["']?([a-z][a-z0-9-]*)""", RegexOptions.Multiline)]
    private static partial Regex IdLine();
}
