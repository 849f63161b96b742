using DiagRules.Packs.Keys;

namespace DiagRules.Packs.Tree;

/// <summary>
/// Lays one tree over another, key by key. Maps merge; lists and text replace; a map of grades to probabilities is one value, since half
/// of a distribution means nothing.
/// </summary>
internal static class TreeMerge
{
    /// <summary>The entry that results; the order of keys is that of the lower one, with new keys behind.</summary>
    public static MapNode Entry(MapNode lower, MapNode upper, Shape shape) => Merge(lower, upper, key => shape.Find(key)?.Form);

    private static MapNode Merge(MapNode lower, MapNode upper, Func<string, Form?> formOf)
    {
        var pairs = lower.Pairs.ToList();
        foreach (var pair in upper.Pairs)
        {
            var at = pairs.FindIndex(present => present.Key.Value == pair.Key.Value);
            if (at < 0)
            {
                pairs.Add(pair);
            }
            else
            {
                pairs[at] = new MapPair(pair.Key, Value(pairs[at].Value, pair.Value, formOf(pair.Key.Value)));
            }
        }

        return new MapNode(upper.Place, pairs);
    }

    private static Node Value(Node lower, Node upper, Form? form)
    {
        if (lower is not MapNode below || upper is not MapNode above || IsOneValue(form, above))
        {
            return upper;
        }

        return form switch
        {
            ShapeForm shape => Merge(below, above, key => shape.Shape.Find(key)?.Form),
            MapForm map => Merge(below, above, _ => map.Value),
            EitherForm either => Value(lower, upper, either.Forms.FirstOrDefault(option => option is MapForm or ShapeForm)),
            _ => upper,
        };
    }

    private static bool IsOneValue(Form? form, MapNode node) => form switch
    {
        MapForm map when map == Forms.Distribution => true,
        MapForm { Value: EitherForm } => node.Pairs.All(pair => pair.Value is not MapNode),
        _ => false,
    };
}
