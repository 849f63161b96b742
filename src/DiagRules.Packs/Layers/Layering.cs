using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Layers;

/// <summary>Lays a pack over its bases: head by key, sections by id, entries by key.</summary>
internal sealed class Layering(PackLoaderOptions options, ProblemSink problems)
{
    // What a pack says of itself is not handed down.
    private static readonly string[] OwnKeys = ["format", "pack", "version", "title", "extends", "words"];

    private readonly Dictionary<string, Dictionary<string, MapPair>> _sections = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _sectionOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SourcePlace> _removed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Section, ScalarNode Key)> _removedCopies = new(StringComparer.Ordinal);
    private MapNode _head = new(default, []);

    /// <summary>The pack and its bases as one; <see langword="null"/> when a base is missing (reported).</summary>
    public Layered? Merge(PackTrees root, MapNode head)
    {
        if (new BaseResolver(new Catalog(options), options.Limits, problems).Resolve(root) is not { } layers)
        {
            return null;
        }

        if (!layers.All(layer => HeadBinder.IsFormatKnown(layer.Trees.Head, problems)))
        {
            return null;
        }

        var clashes = new Clashes(layers, root, problems);
        foreach (var layer in layers)
        {
            TakeOver(layer.Trees, root);
            var merge = new LayerMerge(clashes, layer.Trees == root ? root.Id : null, problems);
            MergeHead(layer.Trees, merge);
            MergeSections(layer.Trees, merge, clashes);
        }

        clashes.Report(head);
        return new Layered
        {
            Head = Own(head),
            Sections = _sections.ToDictionary(section => section.Key, section => section.Value.Values.ToList(), StringComparer.Ordinal),
            Words = [.. layers.Select(layer => (layer.Trees.Id, Layered.WordsOf(layer.Trees.Head)))],
            Removed = _removed,
            RemovedCopies = _removedCopies,
        };
    }

    /// <summary>Problems of the text of a base are problems of this pack.</summary>
    private static void TakeOver(PackTrees layer, PackTrees root)
    {
        if (layer == root)
        {
            return;
        }

        foreach (var problem in layer.Problems.InOrder())
        {
            root.Problems.Add(problem);
        }

        root.IsComplete &= layer.IsComplete;
    }

    private void MergeHead(PackTrees layer, LayerMerge merge)
    {
        if (layer.Head is { } head)
        {
            var isSection = FileShapes.SectionFile;
            var inherited = new MapNode(head.Place, [.. head.Pairs.Where(pair => !OwnKeys.Contains(pair.Key.Value) && isSection.Find(pair.Key.Value) is null)]);
            _head = merge.Map(_head, inherited, key => FileShapes.PackFile.Find(key)?.Form, "pack.yaml");
        }
    }

    /// <summary>The merged head with what the pack says of itself.</summary>
    private MapNode Own(MapNode head) => new(head.Place, [.. head.Pairs.Where(pair => OwnKeys.Contains(pair.Key.Value)), .. _head.Pairs]);

    private void MergeSections(PackTrees layer, LayerMerge merge, Clashes clashes)
    {
        var seen = new Dictionary<string, (string Section, ScalarNode Key)>(StringComparer.Ordinal);
        foreach (var section in Section.All)
        {
            foreach (var pair in layer.Sections.GetValueOrDefault(section, []))
            {
                var id = pair.Key.Value;
                if (seen.TryGetValue(id, out var first))
                {
                    DoubleIds.Report(id, first, (section, pair.Key), problems);
                }
                else
                {
                    seen.Add(id, (section, pair.Key));
                    Put(section, pair, merge, clashes);
                }
            }
        }
    }

    private void Put(string section, MapPair pair, LayerMerge merge, Clashes clashes)
    {
        var id = pair.Key.Value;
        if (!_sections.TryGetValue(section, out var entries))
        {
            _sections.Add(section, entries = new(StringComparer.Ordinal));
        }

        if (ShapeCheck.IsRemoval(pair.Value))
        {
            Remove(section, pair.Key, entries, clashes);
        }
        else if (_sectionOf.TryGetValue(id, out var present) && present != section)
        {
            problems.Add(
                ProblemCatalogue.EntryChangesSection,
                pair.Key.Place,
                $"'{id}' is {Wording.An(Section.Noun(present))} in '{_sections[present][id].Key.Place.Pack}' and "
                + $"{Wording.An(Section.Noun(section))} here; an id keeps its section, so give this one another id.");
        }
        else if (pair.Value is MapNode body)
        {
            _sectionOf[id] = section;
            _removed.Remove(id);
            var shape = FileShapes.EntryOf(section);
            var lower = entries.TryGetValue(id, out var known) ? known.Value as MapNode : null;
            entries[id] = new MapPair(pair.Key, merge.Map(lower ?? new MapNode(body.Place, []), body, key => shape.Find(key)?.Form, $"{section}/{id}", isNew: lower is null));
        }
    }

    private void Remove(string section, ScalarNode key, Dictionary<string, MapPair> entries, Clashes clashes)
    {
        var id = key.Value;
        if (entries.Remove(id, out var removed))
        {
            _sectionOf.Remove(id);
            _removed[id] = key.Place;
            clashes.Settle($"{section}/{id}");
            clashes.CheckRemoval($"{section}/{id}", id, removed, key);
        }
        else
        {
            _removedCopies[id] = (section, key);
        }
    }
}
