using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Makes readings, derived ones after those they derive from.</summary>
internal sealed class ReadingBinder(Draft draft) : IEntryBinder
{
    // A derived reading has its question answered by others, and its accuracy is that of what it derives from.
    private static readonly string[] OnlyMeasured = ["question", "accuracy", "resolution"];

    private readonly RequiredKeys _required = new(draft.Problems);

    /// <summary>The readings in an order in which each comes after those its <c>from</c> names; circles are left out.</summary>
    public static IReadOnlyList<Declared> InOrderOfDependence(Draft draft)
    {
        var readings = draft.Of(Section.Readings);
        var waiting = readings.ToDictionary(reading => reading, reading => Sources(draft, reading).ToHashSet());
        var users = waiting.SelectMany(pair => pair.Value.Select(source => (source, user: pair.Key))).ToLookup(pair => pair.source, pair => pair.user);
        var ready = new Queue<Declared>(readings.Where(reading => waiting[reading].Count == 0));
        var ordered = new List<Declared>();
        while (ready.TryDequeue(out var reading))
        {
            ordered.Add(reading);
            foreach (var user in users[reading])
            {
                if (waiting[user].Remove(reading) && waiting[user].Count == 0)
                {
                    ready.Enqueue(user);
                }
            }
        }

        return ordered;
    }

    public Entry? Bind(Declared declared, Fields fields)
    {
        var unit = fields.Text("unit") is { } text ? QuantityReader.ReadUnit(text.Text, draft.Problems) : null;
        Term? from = null;
        if (fields.Text("from") is { } sum)
        {
            from = fields.Term(sum, unit is null ? null : TermType.Of(unit));
            unit ??= from is null ? null : Measure.UnitOf(from.Type);
            RefuseMeasured(declared, fields);
        }
        else if (!fields.Has("from"))
        {
            Require(declared, fields, "question");
            Require(declared, fields, "unit");
        }

        return unit is null || (from is null && fields.Has("from")) ? null : Make(declared, fields, unit, from);
    }

    private Reading Make(Declared declared, Fields fields, Unit unit, Term? from)
    {
        var question = fields.Sentence("question");
        var resolution = fields.Quantity("resolution");
        return new Reading
        {
            Id = declared.Id,
            Index = declared.Index,
            Title = fields.Sentence("title") ?? question ?? declared.Id,
            Question = question,
            Unit = unit,
            Plausible = fields.Text("plausible") is { } range ? RangeReader.Read(range.Text, unit, draft.Problems) : null,
            Accuracy = fields.Text("accuracy") is { } accuracy && from is null ? AccuracyReader.Read(accuracy.Text, unit, resolution, draft.Problems) : null,
            IsLasting = fields.Flag("lasting"),
            From = from,
        };
    }

    private static IEnumerable<Declared> Sources(Draft draft, Declared reading) =>
        reading.Body.Find("from")?.Value is Tree.ScalarNode from
            ? MentionedIds.In(from.Text)
                .Select(id => draft.Find(SetNames.Replace(id.Value, set => from.Copy?.Members.GetValueOrDefault(set))))
                .OfType<Declared>()
                .Where(source => source.Section == Section.Readings)
            : [];

    private void Require(Declared declared, Fields fields, string key)
    {
        if (!fields.Has(key))
        {
            _required.Report(declared.Id, declared.Place, declared.Shape, declared.Shape.Find(key)!);
        }
    }

    private void RefuseMeasured(Declared declared, Fields fields)
    {
        foreach (var key in OnlyMeasured.Where(fields.Has))
        {
            draft.Problems.Add(
                ProblemCatalogue.UnknownKey,
                fields.PlaceOf(key),
                $"'{key}' has no place beside 'from': '{declared.Id}' is worked out from other readings and not measured; take one of the two out.");
        }
    }
}
