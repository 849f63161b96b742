using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tree;

/// <summary>Gathers the pairs of one map and refuses the keys that YAML would let through.</summary>
internal sealed class MapPairs(ProblemSink problems, bool isFlow)
{
    private const int FewKeys = 12;
    private readonly List<MapPair> _pairs = [];
    private Dictionary<string, ScalarNode>? _byKey;

    public IReadOnlyList<MapPair> All => _pairs;

    public void Add(Node key, Node value)
    {
        if (key is not ScalarNode name)
        {
            if (key is not BrokenNode)
            {
                problems.Add(
                    ProblemCatalogue.WrongKindOfValue,
                    key.Place,
                    $"'{key.Kind}' stands where a key is expected; a key is one word, with ': ' behind it.");
            }
        }
        else if (IsMergeKey(name))
        {
            problems.Add(ProblemCatalogue.AnchorAliasOrTag, name.Place, "'<<' is a merge key; write the keys out.");
        }
        else if (First(name.Value) is { } first)
        {
            problems.Add(
                ProblemCatalogue.DuplicateKey,
                name.Place,
                $"'{name.Value}' stands here and in line {first.Place.Line}, column {first.Place.Column}; keep one of them.");
        }
        else
        {
            Keep(name, value);
        }
    }

    private static bool IsMergeKey(ScalarNode name) => name is { Value: "<<", Text.IsQuoted: false };

    private void Keep(ScalarNode name, Node value)
    {
        if (value is ScalarNode { Value: "", Text.IsQuoted: false })
        {
            var remedy = isFlow ? "a comma ends the value there: put the sentence in quotes" : "write a value behind the colon, or delete the key";
            problems.Add(ProblemCatalogue.KeyWithoutValue, name.Place, $"'{Excerpt.Of(name.Value)}' has no value; {remedy}.");
            value = new BrokenNode(value.Place);
        }

        _pairs.Add(new MapPair(name, value));
        _byKey?.Add(name.Value, name);
    }

    /// <summary>Sections hold thousands of ids, entries a handful of keys: a dictionary is made only for the former.</summary>
    private ScalarNode? First(string key)
    {
        if (_byKey is null && _pairs.Count > FewKeys)
        {
            _byKey = _pairs.ToDictionary(pair => pair.Key.Value, pair => pair.Key, StringComparer.Ordinal);
        }

        return _byKey is not null ? _byKey.GetValueOrDefault(key) : _pairs.Find(pair => pair.Key.Value == key)?.Key;
    }
}
