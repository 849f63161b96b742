using DiagRules.Model.Problems;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Layers;

/// <summary>A pack with its bases merged in: what the reader binds.</summary>
internal sealed class Layered
{
    /// <summary>The head.</summary>
    public required MapNode Head { get; init; }

    /// <summary>Entries by section. In a pack without bases an id may stand twice still.</summary>
    public required IReadOnlyDictionary<string, List<MapPair>> Sections { get; init; }

    /// <summary>The <c>words</c> of each layer, the pack's own last.</summary>
    public required IReadOnlyList<(string Pack, MapNode? Words)> Words { get; init; }

    /// <summary>Ids that a layer took away, with the place.</summary>
    public IReadOnlyDictionary<string, SourcePlace> Removed { get; init; } = new Dictionary<string, SourcePlace>();

    /// <summary>Ids to be taken away that stand nowhere as such: they may be copies of a template.</summary>
    public IReadOnlyDictionary<string, (string Section, ScalarNode Key)> RemovedCopies { get; init; } = new Dictionary<string, (string Section, ScalarNode Key)>();

    /// <summary>A pack by itself.</summary>
    public static Layered Alone(PackTrees pack, MapNode head) => new() { Head = head, Sections = pack.Sections, Words = [(pack.Id, WordsOf(head))] };

    public static MapNode? WordsOf(MapNode? head) => head?.Find("words")?.Value as MapNode;
}
