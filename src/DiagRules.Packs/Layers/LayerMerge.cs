using DiagRules.Model.Problems;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Layers;

/// <summary>
/// Lays one map over another, key by key. Maps merge; lists and text replace; a map of grades to probabilities is one value;
/// <c>key+</c> and <c>key-</c> change a list; <c>remove</c> takes a key away.
/// </summary>
/// <param name="clashes">Where bases that disagree are kept; <see langword="null"/> within one pack.</param>
/// <param name="watched">Id of the pack whose overrides are to change something; <see langword="null"/> for none.</param>
/// <param name="problems">Where problems go.</param>
internal sealed class LayerMerge(Clashes? clashes, string? watched, ProblemSink problems)
{
    /// <summary>The map that results; the order of keys is that of the lower one, with new keys behind.</summary>
    /// <param name="lower">What is there.</param>
    /// <param name="upper">What goes over it.</param>
    /// <param name="formOf">The form of each key.</param>
    /// <param name="path">Section, id and keys down to here.</param>
    /// <param name="isNew">Whether there is nothing below to change.</param>
    public MapNode Map(MapNode lower, MapNode upper, Func<string, Form?> formOf, string path, bool isNew = false)
    {
        var pairs = lower.Pairs.ToList();
        foreach (var (key, value) in upper.Pairs)
        {
            var edit = key.Value.Length > 1 && key.Value[^1] is '+' or '-' && formOf(key.Value) is null ? key.Value[^1] : ' ';
            var name = edit == ' ' ? key.Value : key.Value[..^1];
            var at = pairs.FindIndex(pair => pair.Key.Value == name);
            if (edit != ' ')
            {
                EditList(pairs, at, key, value, edit, isNew);
            }
            else if (ShapeCheck.IsRemoval(value))
            {
                Remove(pairs, at, key, value, $"{path}/{name}");
            }
            else if (at < 0)
            {
                pairs.Add(new MapPair(key, value));
            }
            else
            {
                pairs[at] = new MapPair(key, Value(pairs[at].Value, value, formOf(name), $"{path}/{name}"));
            }
        }

        return new MapNode(upper.Place, pairs);
    }

    private void Remove(List<MapPair> pairs, int at, ScalarNode key, Node value, string path)
    {
        if (at < 0)
        {
            var near = Spelling.DidYouMean(key.Value, pairs.Select(pair => pair.Key.Value));
            problems.Add(ProblemCatalogue.NothingToRemove, key.Place, $"'{key.Value}: remove' finds no '{key.Value}' to take away.{near}");
            return;
        }

        var lower = pairs[at].Value;
        if (clashes?.IsAbove(key.Place.Pack, lower.Place.Pack) == false)
        {
            clashes.Add(path, lower, value);
        }
        else
        {
            clashes?.Settle(path);
        }

        pairs.RemoveAt(at);
    }

    private Node Value(Node lower, Node upper, Form? form, string path)
    {
        if (lower is MapNode below && upper is MapNode above && !IsOneValue(form, above))
        {
            switch (form)
            {
                case ShapeForm shape:
                    return Map(below, above, key => shape.Shape.Find(key)?.Form, path);
                case MapForm map:
                    return Map(below, above, _ => map.Value, path);
                case EitherForm either:
                    return Value(lower, upper, either.Forms.FirstOrDefault(option => option is MapForm or ShapeForm), path);
            }
        }

        return Override(lower, upper, path);
    }

    private Node Override(Node lower, Node upper, string path)
    {
        var isSame = TreeText.AreSame(lower, upper);
        if (clashes?.IsAbove(upper.Place.Pack, lower.Place.Pack) == false)
        {
            if (isSame)
            {
                return lower;
            }

            clashes.Add(path, lower, upper);
        }
        else
        {
            clashes?.Settle(path);
            if (isSame && watched is not null && upper.Place.Pack == watched && lower.Place.Pack != watched)
            {
                var key = path.Split('/')[^1];
                problems.Add(
                    ProblemCatalogue.OverrideChangesNothing,
                    upper.Place,
                    $"'{key}' is '{TreeText.Of(upper)}' in '{lower.Place.Pack}' already; take it out here.");
            }
        }

        return Remember(upper, lower.Place.Pack);
    }

    /// <summary>Text that overrides a base remembers which one.</summary>
    private static Node Remember(Node upper, string lowerPack) => upper is ScalarNode scalar && scalar.Place.Pack != lowerPack && lowerPack is { Length: > 0 }
        ? new ScalarNode(scalar.Text with { Place = scalar.Place with { Overrides = lowerPack } }, scalar.Copy) { CutOff = scalar.CutOff }
        : upper;

    private void EditList(List<MapPair> pairs, int at, ScalarNode key, Node value, char edit, bool isNew)
    {
        if (value is not ListNode change)
        {
            return;
        }

        if (isNew || (at >= 0 && pairs[at].Value is not ListNode))
        {
            var found = isNew ? "no base has this entry" : $"it is '{TreeText.Of(pairs[at].Value)}' in '{pairs[at].Value.Place.Pack}'";
            problems.Add(
                ProblemCatalogue.NotAList,
                key.Place,
                $"'{key.Value}' changes a list of a base, and {found}; write '{key.Value[..^1]}' with the whole value.");
            return;
        }

        var items = at < 0 ? [] : ((ListNode)pairs[at].Value).Items.ToList();
        foreach (var item in change.Items)
        {
            Edit(items, item, key, edit);
        }

        var listKey = new ScalarNode(key.Text.Slice(0, key.Value.Length - 1), key.Copy);
        var edited = new MapPair(at < 0 ? listKey : pairs[at].Key, new ListNode(change.Place, items));
        if (at < 0)
        {
            pairs.Add(edited);
        }
        else
        {
            pairs[at] = edited;
        }
    }

    private void Edit(List<Node> items, Node item, ScalarNode key, char edit)
    {
        var at = items.FindIndex(present => TreeText.AreSame(present, item));
        if (edit == '-' && at >= 0)
        {
            items.RemoveAt(at);
        }
        else if (edit == '-')
        {
            var near = item is ScalarNode text ? Spelling.DidYouMean(text.Value, items.OfType<ScalarNode>().Select(present => present.Value)) : "";
            problems.Add(ProblemCatalogue.NothingToRemove, item.Place, $"'{key.Value}' finds no '{TreeText.Of(item)}' to take away.{near}");
        }
        else if (at >= 0)
        {
            problems.Add(ProblemCatalogue.OverrideChangesNothing, item.Place, $"'{TreeText.Of(item)}' is in '{key.Value[..^1]}' already; take it out here.");
        }
        else
        {
            items.Add(item);
        }
    }

    private static bool IsOneValue(Form? form, MapNode node) => form switch
    {
        MapForm map when map == Forms.Distribution => true,
        MapForm { Value: EitherForm } => node.Pairs.All(pair => pair.Value is not MapNode),
        _ => false,
    };
}
