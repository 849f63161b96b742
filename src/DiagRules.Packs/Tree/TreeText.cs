using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tree;

/// <summary>Trees as one line of text: for messages, and to tell whether two say the same.</summary>
internal static class TreeText
{
    /// <summary>Short enough for a message.</summary>
    public static string Of(Node node) => Excerpt.Of(Whole(node));

    /// <summary>Whether two trees say the same, wherever and however they are written; the order of keys does not count.</summary>
    public static bool AreSame(Node left, Node right) => (left, right) switch
    {
        (ScalarNode one, ScalarNode other) => one.Value == other.Value && (one.Copy is null || other.Copy is null || one.Copy.Name == other.Copy.Name),
        (ListNode one, ListNode other) => one.Items.Count == other.Items.Count && one.Items.Zip(other.Items).All(pair => AreSame(pair.First, pair.Second)),
        (MapNode one, MapNode other) => one.Pairs.Count == other.Pairs.Count
            && one.Pairs.All(pair => other.Find(pair.Key.Value) is { } match && AreSame(pair.Value, match.Value)),
        _ => false,
    };

    private static string Whole(Node node) => node switch
    {
        ScalarNode scalar => scalar.Value,
        ListNode list => $"[{string.Join(", ", list.Items.Select(Whole))}]",
        MapNode map => $"{{ {string.Join(", ", map.Pairs.Select(pair => $"{pair.Key.Value}: {Whole(pair.Value)}"))} }}",
        _ => "...",
    };
}
