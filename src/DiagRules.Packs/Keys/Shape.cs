using System.Collections.Frozen;
using System.Collections.Immutable;
using DiagRules.Model.Problems;

namespace DiagRules.Packs.Keys;

/// <summary>The keys of one kind of map, in the order of the format's page. Immutable.</summary>
internal sealed class Shape
{
    /// <summary>Keys of the host's own begin like this; they are kept and not read.</summary>
    public const string HostPrefix = "x-";

    private readonly FrozenDictionary<string, KeySpec> _byName;

    /// <summary>Makes a shape.</summary>
    /// <param name="name">What has these keys, with its article: <c>a finding</c>.</param>
    /// <param name="keys">The keys in order.</param>
    public Shape(string name, params ImmutableArray<KeySpec> keys)
    {
        Name = name;
        Keys = keys;
        _byName = keys.ToFrozenDictionary(key => key.Name, StringComparer.Ordinal);
    }

    public string Name { get; }

    public ImmutableArray<KeySpec> Keys { get; }

    /// <summary>Keys that an author may expect here, with the problem to report instead of "unknown key".</summary>
    public ImmutableDictionary<string, (ProblemDescriptor Descriptor, string Remedy)> Misplaced { get; init; } =
        ImmutableDictionary<string, (ProblemDescriptor Descriptor, string Remedy)>.Empty;

    /// <summary>What any other key and its value are; <see langword="null"/> where other keys are refused.</summary>
    public MapForm? Others { get; init; }

    public KeySpec? Find(string name) => _byName.GetValueOrDefault(name);
}
