using DiagRules.Model.Problems;
using DiagRules.Packs.Sets;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tree;

/// <summary>A piece of a pack as YAML structures it: text, a list or a map, each with its place.</summary>
internal abstract class Node
{
    /// <summary>Where it begins.</summary>
    public abstract SourcePlace Place { get; }

    /// <summary>What it is, for messages.</summary>
    public abstract string Kind { get; }
}

/// <summary>A piece that was refused already; nothing more is said about it.</summary>
internal sealed class BrokenNode(SourcePlace place) : Node
{
    public override SourcePlace Place { get; } = place;

    public override string Kind => "nothing readable";
}

/// <summary>A scalar. Every scalar is text until its key gives it a type.</summary>
internal sealed class ScalarNode(PlacedText text, Copy? copy = null) : Node
{
    public override SourcePlace Place => Text.Place;

    /// <summary>The text as written, <c>$set</c> and all.</summary>
    public PlacedText Text { get; } = text;

    public string Value => Text.Value;

    /// <summary>The member of a <c>$set</c> this stands for; <see langword="null"/> outside of copies.</summary>
    public Copy? Copy { get; } = copy;

    /// <summary>What YAML cut off behind unquoted text because of ` #`; <see langword="null"/> when nothing.</summary>
    public string? CutOff { get; init; }

    public override string Kind => "text";
}

/// <summary>A list.</summary>
internal sealed class ListNode(SourcePlace place, IReadOnlyList<Node> items) : Node
{
    public override SourcePlace Place { get; } = place;

    public IReadOnlyList<Node> Items { get; } = items;

    public override string Kind => "a list";
}

/// <summary>A map; no key stands twice.</summary>
internal sealed class MapNode(SourcePlace place, IReadOnlyList<MapPair> pairs) : Node
{
    public override SourcePlace Place { get; } = place;

    public IReadOnlyList<MapPair> Pairs { get; } = pairs;

    public override string Kind => "a map";

    /// <summary>The pair with this key, or <see langword="null"/>. Entries have few keys, so a walk is fast.</summary>
    public MapPair? Find(string key)
    {
        foreach (var pair in Pairs)
        {
            if (pair.Key.Value == key)
            {
                return pair;
            }
        }

        return null;
    }
}

/// <summary>A key and its value.</summary>
internal sealed record MapPair(ScalarNode Key, Node Value);
