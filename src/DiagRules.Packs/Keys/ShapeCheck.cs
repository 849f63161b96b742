using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Keys;

/// <summary>
/// Holds a tree against the table of keys: unknown keys, values of the wrong kind, sentences cut off by a comment, words that YAML
/// readers take for something else. Says nothing on what the values mean.
/// </summary>
/// <param name="problems">Where problems go.</param>
/// <param name="isLayer">Whether the pack builds on others, so that <c>remove</c>, <c>key+</c> and <c>key-</c> have a meaning.</param>
internal sealed class ShapeCheck(ProblemSink problems, bool isLayer = false)
{
    /// <summary>As value of an id or key: take away what a base has.</summary>
    public const string Remove = "remove";

    /// <summary>Checks a value against its form.</summary>
    /// <param name="key">The key, item or id it belongs to, as messages name it.</param>
    /// <param name="node">The value.</param>
    /// <param name="form">What is expected.</param>
    public void Check(string key, Node node, Form form)
    {
        if (node is BrokenNode || (isLayer && IsRemoval(node)))
        {
            return;
        }

        switch (form, node)
        {
            case (EitherForm either, _):
                CheckEither(key, node, either);
                break;
            case (ShapeForm shape, MapNode map):
                CheckShape(map, shape.Shape);
                break;
            case (MapForm open, MapNode map):
                CheckMap(map, open);
                break;
            case (ListForm list, ListNode items):
                foreach (var item in items.Items)
                {
                    Check(key, item, list.Item);
                }

                break;
            case (ScalarForm scalar, ScalarNode text):
                CheckText(key, text, scalar);
                break;
            default:
                ReportKind(key, node, form);
                break;
        }
    }

    private void ReportKind(string key, Node node, Form form)
    {
        if (IsRemoval(node))
        {
            problems.Add(
                ProblemCatalogue.NothingToRemove,
                node.Place,
                $"'{Excerpt.Of(key)}: remove' takes something of a base away, but this pack extends none; delete the line.");
        }
        else
        {
            problems.Add(ProblemCatalogue.WrongKindOfValue, node.Place, $"'{Excerpt.Of(key)}' is {node.Kind}; expected is {form.Expected}.");
        }
    }

    /// <summary>Whether a value is the word that takes something of a base away.</summary>
    public static bool IsRemoval(Node node) => node is ScalarNode { Value: Remove, Text.IsQuoted: false };

    public void CheckShape(MapNode map, Shape shape)
    {
        foreach (var (key, value) in map.Pairs)
        {
            if (key.Value.StartsWith(Shape.HostPrefix, StringComparison.Ordinal))
            {
                continue;
            }

            if (shape.Find(key.Value) is { } spec)
            {
                Check(key.Value, value, spec.Form);
            }
            else if (!CheckListEdit(key, value, shape))
            {
                CheckOther(key, value, shape);
            }
        }
    }

    /// <summary><c>hazards+</c> and <c>hazards-</c> of a layer.</summary>
    private bool CheckListEdit(ScalarNode key, Node value, Shape shape)
    {
        if (key.Value is not [.. var name, '+' or '-'] || shape.Find(name) is not { } spec)
        {
            return false;
        }

        var list = spec.Form as ListForm ?? (spec.Form as EitherForm)?.Forms.OfType<ListForm>().FirstOrDefault();
        if (list is null)
        {
            problems.Add(
                ProblemCatalogue.NotAList,
                key.Place,
                $"'{key.Value}' changes a list, but '{name}' is {spec.Form.Expected}; write '{name}' with its new value.");
        }
        else if (!isLayer)
        {
            problems.Add(
                ProblemCatalogue.NotAList,
                key.Place,
                $"'{key.Value}' changes a list of a base, but this pack extends none; write '{name}' with the whole list.");
        }
        else
        {
            Check(key.Value, value, list);
        }

        return true;
    }

    private void CheckOther(ScalarNode key, Node value, Shape shape)
    {
        if (shape.Others is { } others)
        {
            CheckKey(key, others.Key);
            Check(key.Value, value, others.Value);
        }
        else if (shape.Misplaced.TryGetValue(key.Value, out var misplaced))
        {
            problems.Add(misplaced.Descriptor, key.Place, $"'{key.Value}' has no place in {shape.Name}: {misplaced.Remedy}.");
        }
        else if (value is not BrokenNode)
        {
            // A key without a value was reported: most often the rest of a sentence behind its comma, and no key at all.
            var known = shape.Keys.Select(spec => spec.Name).ToList();
            problems.Add(
                ProblemCatalogue.UnknownKey,
                key.Place,
                $"'{Excerpt.Of(key.Value)}' is no key of {shape.Name}.{Spelling.DidYouMean(key.Value, known)} Keys here: {string.Join(", ", known)}.");
        }
    }

    private void CheckMap(MapNode map, MapForm form)
    {
        foreach (var (key, value) in map.Pairs)
        {
            CheckKey(key, form.Key);
            Check(key.Value, value, form.Value);
        }
    }

    private void CheckKey(ScalarNode key, ScalarKind kind)
    {
        if (kind.IsWord())
        {
            RefuseYamlWord(key.Value, key, new ScalarForm(kind));
        }
    }

    private void CheckEither(string key, Node node, EitherForm either)
    {
        var fitting = either.Forms.FirstOrDefault(form => form switch
        {
            ScalarForm => node is ScalarNode,
            ListForm => node is ListNode,
            _ => node is MapNode,
        });
        if (fitting is not null)
        {
            Check(key, node, fitting);
        }
        else
        {
            ReportKind(key, node, either);
        }
    }

    private void CheckText(string key, ScalarNode text, ScalarForm form)
    {
        if (form.Kind == ScalarKind.Sentence)
        {
            CheckSentence(key, text);
        }
        else if (form.Kind.IsWord())
        {
            RefuseYamlWord(key, text, form);
        }
    }

    private void CheckSentence(string key, ScalarNode text)
    {
        if (text.CutOff is { } lost)
        {
            problems.Add(
                ProblemCatalogue.TextCutOff,
                text.Place,
                $"'{Excerpt.Of(text.Value)}' is all that is left of '{Excerpt.Of(key)}': YAML takes '{Excerpt.Of(lost)}' for a comment; put "
                + "the sentence in quotes, or the comment on a line of its own.");
        }
        else if (string.IsNullOrWhiteSpace(text.Value))
        {
            problems.Add(ProblemCatalogue.KeyWithoutValue, text.Place, $"'{Excerpt.Of(key)}' is empty; write a sentence, or delete the key.");
        }
    }

    private void RefuseYamlWord(string key, ScalarNode text, ScalarForm form)
    {
        if (ReservedWords.IsYamlConstant(text.Value))
        {
            var remedy = form.Kind == ScalarKind.Flag ? "write yes or no" : "pick another word";
            var where = key == text.Value ? "is a key here" : $"stands at '{Excerpt.Of(key)}'";
            problems.Add(
                ProblemCatalogue.TrueFalseOrNull,
                text.Place,
                $"'{text.Value}' {where}, and programs that read YAML disagree on what it is; {remedy}.");
        }
    }
}
