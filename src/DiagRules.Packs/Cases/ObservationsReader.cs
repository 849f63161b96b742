using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Observations;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Cases;

/// <summary>Reads the observations of recorded cases.</summary>
internal sealed class ObservationsReader(Draft draft)
{
    private const string Tried = "tried", Result = "result";

    private readonly ObservationBinder _binder = new(id => draft.Find(id)?.Entry, () => draft.Ids);

    private ProblemSink Problems => draft.Problems;

    /// <summary>The observations in the order they are written; those with a problem are left out.</summary>
    /// <param name="items">The list.</param>
    /// <param name="confirmed">The causes of the case: observing one of them would answer it.</param>
    public ImmutableArray<Observation> Read(IReadOnlyList<Node> items, ImmutableArray<string> confirmed) =>
        [.. items.OfType<MapNode>().Select(item => Read(item, confirmed)).OfType<Observation>()];

    private Observation? Read(MapNode item, ImmutableArray<string> confirmed)
    {
        var ids = item.Pairs.Where(pair => IsId(pair.Key.Value)).ToList();
        var tried = item.Find(Tried);
        var fields = new Fields(draft, null, item);
        if (ids.Count + (tried is null ? 0 : 1) != 1)
        {
            var found = ids.Select(pair => pair.Key.Value).Concat(tried is null ? [] : [Tried]).ToList();
            Problems.Add(
                ProblemCatalogue.BadObservation,
                found.Count > 1 && tried is null ? ids[1].Key.Place : item.Place,
                found.Count == 0
                    ? "'observations' has an item without an id; write for example '{ pump-sound: clicks-only, by: owner }'."
                    : $"{Wording.And(found)} stand in one observation; write an item for each, in the order they became known.");
            return null;
        }

        var read = tried is null ? ReadValue(ids[0], confirmed) : ReadTried(tried, item);
        RefuseResult(item, tried);
        return read is null ? null : read with
        {
            By = fields.Skill("by"),
            Trust = fields.Text("trust") is { } trust ? TrustReader.Read(trust.Text, Problems) : null,
            WhileWorking = IsWorking(fields),
            At = fields.Text("at") is { } at ? DateReader.ReadMoment(at.Text, "at", Problems) : null,
            Note = fields.Sentence("note"),
            Place = (tried is null ? ids[0].Key : tried.Value).Place,
        };
    }

    private static bool IsId(string key) => CaseShapes.Observation.Find(key) is null && !key.StartsWith(Shape.HostPrefix, StringComparison.Ordinal);

    private Observation? ReadValue(MapPair pair, ImmutableArray<string> confirmed)
    {
        if (pair.Value is not ScalarNode value || IsRefused(pair.Key) || ReservedWords.IsYamlConstant(value.Value))
        {
            return null;
        }

        if (confirmed.Contains(pair.Key.Value, StringComparer.Ordinal))
        {
            Problems.Add(
                ProblemCatalogue.ObservationAnswers,
                pair.Key.Place,
                $"'{pair.Key.Value}' is what the case confirms, so observing it leaves nothing to find; move it to 'seen-on-opening'.");
            return null;
        }

        return _binder.Read(pair.Key.Text, value.Text, Problems);
    }

    private Observation? ReadTried(MapPair tried, MapNode item)
    {
        if (item.Find(Result) is not { } result)
        {
            Problems.Add(ProblemCatalogue.RequiredKeyMissing, tried.Key.Place, "'tried' has no 'result'; write for example 'result: no-change'.");
            return null;
        }

        return tried.Value is ScalarNode repair && result.Value is ScalarNode text && !IsRefused(repair) ? _binder.ReadTried(repair.Text, text.Text, Problems) : null;
    }

    private void RefuseResult(MapNode item, MapPair? tried)
    {
        if (tried is null && item.Find(Result) is { } result)
        {
            Problems.Add(ProblemCatalogue.BadObservation, result.Key.Place, "'result' stands without 'tried'; it says what came of a repair that was tried.");
        }
    }

    /// <summary>An entry that was refused has been reported, and a word YAML readers quarrel over too.</summary>
    private bool IsRefused(ScalarNode id) => draft.Find(id.Value) is { Entry: null } || ReservedWords.IsYamlConstant(id.Value);

    private bool IsWorking(Fields fields)
    {
        if (fields.Text("while") is not { } text || text.Value is "failing" or "working" || ReservedWords.IsYamlConstant(text.Value))
        {
            return fields.Text("while")?.Value == "working";
        }

        Problems.Add(ProblemCatalogue.WrongKindOfValue, text.Place, $"'while' is '{Excerpt.Of(text.Value)}'; it takes 'failing' or 'working'.");
        return false;
    }
}
