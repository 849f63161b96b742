using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Sets;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>
/// Reads the values under the keys of one entry (or of a map inside it). A key that is not there, or whose value was refused by the
/// table of keys already, gives nothing and says nothing.
/// </summary>
/// <param name="draft">The pack in the making.</param>
/// <param name="owner">The entry; <see langword="null"/> for the head of the pack and for cases.</param>
/// <param name="body">The map.</param>
internal sealed class Fields(Draft draft, Declared? owner, MapNode body)
{
    private readonly Names _names = new(draft);

    private ProblemSink Problems => draft.Problems;

    public bool Has(string key) => body.Find(key) is not null;

    public ScalarNode? Text(string key) => body.Find(key)?.Value as ScalarNode;

    public MapNode? Map(string key) => body.Find(key)?.Value as MapNode;

    public IReadOnlyList<Node> Items(string key) => body.Find(key)?.Value is ListNode list ? list.Items : [];

    public IEnumerable<ScalarNode> Texts(string key) => Items(key).OfType<ScalarNode>();

    /// <summary>Where a key is written, or the map itself.</summary>
    public SourcePlace PlaceOf(string key) => body.Find(key)?.Key.Place ?? body.Place;

    public string? Sentence(string key) => Text(key) is { } text ? Sentence(text) : null;

    /// <summary>A sentence, the words of members put in.</summary>
    public string Sentence(ScalarNode text)
    {
        foreach (var set in MemberSets.Mentioned(text.Value))
        {
            if (text.Copy?.Members.ContainsKey(set) == true)
            {
                continue;
            }

            var isSet = draft.Sets.Has(set);
            Problems.Add(
                isSet ? ProblemCatalogue.SetNeedsMember : ProblemCatalogue.NoSuchSet,
                text.Place,
                isSet
                    ? $"'${set}' stands in a sentence of an entry that is not copied for its members; put '${set}' into the id, or write the word."
                    : $"No set '{set}' for '${set}' in a sentence; write '$$' for a dollar sign.");
        }

        return Substitution.Apply(text.Text, set => text.Copy?.Members.GetValueOrDefault(set) is { } member ? draft.Sets.WordOf(set, member) : null).Value.Trim();
    }

    public ImmutableArray<string> Sentences(string key) => [.. Texts(key).Select(Sentence)];

    public bool Flag(string key) => Text(key) is { } text && !IsYamlWord(text) && FlagReader.Read(text.Text, key, Problems) is true;

    public int? Count(string key) => Text(key) is { } text ? NumberReader.ReadCount(text.Text, Problems) : null;

    /// <summary>A number of 0 or more.</summary>
    public double? Amount(string key)
    {
        if (Text(key) is not { } text || NumberReader.Read(text.Text, Problems) is not { } number)
        {
            return null;
        }

        if (number >= 0)
        {
            return number;
        }

        Problems.Add(ProblemCatalogue.NumberNotReadable, text.Place, $"'{text.Value}' is below zero; '{key}' is 0 or more.");
        return null;
    }

    public double? Probability(string key) => Text(key) is { } text ? Probability(text) : null;

    public double? Probability(ScalarNode text) => ProbabilityReader.Read(text.Text, draft.WordsOf(text.Place.Pack), Problems);

    public double? Share(string key, string subject) => Text(key) is { } text ? ShareReader.Read(text.Text, subject, Problems) : null;

    public Quantity? Quantity(string key) => Text(key) is { } text ? QuantityReader.Read(text.Text, Problems) : null;

    public Quantity? Quantity(string key, string unit) =>
        Text(key) is { } text && UnitTable.TryGet(unit, out var expected) ? QuantityReader.Read(text.Text, expected, Problems) : null;

    public Expense Cost(string key) => Text(key) is { } text ? draft.Money.ReadCost(text.Text) ?? default : default;

    public Skill? Skill(string key) => Text(key) is { } text ? SkillWords.Read(text, key, Problems) : null;

    public Condition? Condition(string key) => Text(key) is { } text ? Condition(text) : null;

    /// <summary>A condition; what it looks at is remembered as mentioned by the entry.</summary>
    public Condition? Condition(ScalarNode text)
    {
        var condition = Parser(text).ReadCondition(text.Text);
        if (condition is not null)
        {
            Remember(Mention.In(condition, draft));
        }

        return condition;
    }

    public Term? Term(ScalarNode text, TermType? expected = null)
    {
        var term = Parser(text).ReadTerm(text.Text, expected);
        if (term is not null)
        {
            Remember(Mention.In(term, draft));
        }

        return term;
    }

    /// <summary>The one entry named under a key.</summary>
    public Declared? Named(string key, Target target) => Text(key) is { } text ? _names.One(text, owner, target) : null;

    /// <summary>The entries named by a list, each with the text that names it.</summary>
    public IEnumerable<(Declared Named, ScalarNode Text)> NamedIn(string key, Target target) =>
        Texts(key).SelectMany(text => _names.All(text, owner, target).Select(named => (named, text)));

    public ImmutableArray<string> Ids(string key, Target target) => [.. NamedIn(key, target).Select(named => named.Named.Id).Distinct(StringComparer.Ordinal)];

    /// <summary>The entries named by the keys of a map. A key with <c>$set</c> stands for all members; one written out goes before it.</summary>
    public IReadOnlyList<(Declared Named, MapPair Pair)> NamedBy(MapNode map, Target target) => new KeyNames(_names, owner, Problems).Read(map, target);

    private ConditionParser Parser(ScalarNode text) =>
        new(new Symbols(draft, text.Copy), Problems, new ConditionLimits(draft.Limits.ConditionLength, draft.Limits.ConditionDepth));

    private void Remember(IEnumerable<Mention> mentions)
    {
        if (owner is not null)
        {
            draft.References.AddRange(mentions.Select(mention => new Reference(owner, mention.To, mention.Place)));
        }
    }

    /// <summary>Reported by the table of keys.</summary>
    private static bool IsYamlWord(ScalarNode text) => ReservedWords.IsYamlConstant(text.Value);
}
