using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>An id of the pack with what is written under it, from the moment it is known until its entry is made.</summary>
/// <param name="section">Its section.</param>
/// <param name="id">The id, members put in.</param>
/// <param name="place">Where the id is written.</param>
/// <param name="body">What is written under it, layers and copies put together.</param>
internal sealed class Declared(string section, string id, SourcePlace place, MapNode body)
{
    public string Section { get; } = section;

    public string Id { get; } = id;

    public SourcePlace Place { get; } = place;

    public MapNode Body { get; } = body;

    public string Noun => Binding.Section.Noun(Section);

    public Shape Shape => FileShapes.EntryOf(Section);

    /// <summary>Position among the entries of its section, in ordinal order of ids.</summary>
    public int Index { get; set; }

    /// <summary>Position among the graded entries, or -1.</summary>
    public int Node { get; set; } = -1;

    public bool IsGraded => Node >= 0;

    public ImmutableArray<string> Grades { get; set; } = [];

    public ImmutableArray<string> Only { get; set; } = [];

    /// <summary>Whether this is a finding with a question that no check gives, so that the question is a check of its own.</summary>
    public bool IsAsked { get; set; }

    /// <summary>Whether this is a precondition without a repair of its own, so that what restores it is one.</summary>
    public bool IsRestored { get; set; }

    /// <summary>Whether something about it was refused; what follows from that is not reported on top.</summary>
    public bool IsDamaged { get; set; }

    /// <summary>What conditions see of it: an outline first, in the end the entry itself; <see langword="null"/> where neither could be made.</summary>
    public Entry? Entry { get; set; }

    public ImmutableDictionary<string, string> Accepts { get; set; } = ImmutableDictionary<string, string>.Empty;

    public bool IsOn(string chassis) => Only.IsEmpty || Only.Contains(chassis, StringComparer.Ordinal);
}
