using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Keeps what stands under keys of the host's own.</summary>
internal static class HostKeys
{
    public static ImmutableDictionary<string, HostValue> Read(MapNode map)
    {
        var keys = HostValue.None;
        foreach (var (key, value) in map.Pairs)
        {
            if (key.Value.StartsWith(Shape.HostPrefix, StringComparison.Ordinal))
            {
                keys = keys.SetItem(key.Value, Value(value));
            }
        }

        return keys;
    }

    private static HostValue Value(Node node) => node switch
    {
        ScalarNode scalar => new HostValue { Text = scalar.Value },
        ListNode list => new HostValue { Items = [.. list.Items.Select(Value)] },
        MapNode map => new HostValue { Members = map.Pairs.ToImmutableDictionary(pair => pair.Key.Value, pair => Value(pair.Value), StringComparer.Ordinal) },
        _ => new HostValue(),
    };
}
