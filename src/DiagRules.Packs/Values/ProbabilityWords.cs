using System.Collections.Frozen;

namespace DiagRules.Packs.Values;

/// <summary>The words that stand for probabilities in one pack. Immutable.</summary>
internal sealed class ProbabilityWords
{
    private static readonly (string Word, double Probability)[] BuiltIn =
    [
        ("always", 1), ("nearly-always", 0.95), ("usually", 0.75), ("often", 0.5),
        ("sometimes", 0.25), ("seldom", 0.1), ("hardly-ever", 0.02), ("never", 0),
    ];

    private readonly FrozenDictionary<string, double> _byWord;

    /// <summary>The built-in words, with those of a pack beside or instead of them.</summary>
    public ProbabilityWords(IEnumerable<KeyValuePair<string, double>>? own = null)
    {
        var words = BuiltIn.ToDictionary(word => word.Word, word => word.Probability, StringComparer.Ordinal);
        foreach (var (word, probability) in own ?? [])
        {
            words[word] = probability;
        }

        _byWord = words.ToFrozenDictionary(StringComparer.Ordinal);
        All = [.. words.OrderByDescending(word => word.Value).ThenBy(word => word.Key, StringComparer.Ordinal).Select(word => word.Key)];
    }

    /// <summary>The built-in words.</summary>
    public static ProbabilityWords Default { get; } = new();

    /// <summary>All words, the most probable first.</summary>
    public IReadOnlyList<string> All { get; }

    /// <summary>What a word stands for.</summary>
    public bool TryGet(string word, out double probability) => _byWord.TryGetValue(word, out probability);
}
