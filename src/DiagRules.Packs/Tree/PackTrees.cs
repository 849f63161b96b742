using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tree;

/// <summary>The trees of one pack's own files, before layers and copies.</summary>
internal sealed class PackTrees
{
    /// <summary>Id from <c>pack.yaml</c>; empty when it gives none.</summary>
    public required string Id { get; init; }

    /// <summary>The whole of <c>pack.yaml</c>, or <see langword="null"/> when it could not be read.</summary>
    public MapNode? Head { get; set; }

    /// <summary>Whether the pack builds on others.</summary>
    public bool IsLayer => Head?.Find("extends")?.Value is ListNode { Items.Count: > 0 };

    /// <summary>Entries by section, in order of file and line; an id may stand twice still.</summary>
    public Dictionary<string, List<MapPair>> Sections { get; } = new(StringComparer.Ordinal);

    /// <summary>Documents of case files, in order of file and line.</summary>
    public List<Document> Cases { get; } = [];

    /// <summary>Whether every file could be read: if not, an id that seems to be missing may stand in the rest.</summary>
    public bool IsComplete { get; set; } = true;

    /// <summary>Problems of the pack itself.</summary>
    public ProblemSink Problems { get; } = new();

    /// <summary>Problems of its case files, which do not refuse the pack.</summary>
    public ProblemSink CaseProblems { get; } = new();
}
