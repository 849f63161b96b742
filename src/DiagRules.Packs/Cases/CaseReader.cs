using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;
using Expectation = DiagRules.Model.Cases.Expectation;

namespace DiagRules.Packs.Cases;

/// <summary>Reads recorded cases. A case with an error is refused by itself; the pack and its other cases stand.</summary>
/// <param name="draft">The pack, with its problems going where those of cases go.</param>
/// <param name="packId">Id of the pack.</param>
internal sealed class CaseReader(Draft draft, string packId)
{
    private readonly ObservationsReader _observations = new(draft);
    private readonly Dictionary<string, SourcePlace> _ids = new(StringComparer.Ordinal);

    private ProblemSink Problems => draft.Problems;

    /// <summary>The cases that could be read, in ordinal order of ids.</summary>
    public ImmutableArray<RecordedCase> Read(IEnumerable<Document> documents) =>
        [.. documents.Select(Read).OfType<RecordedCase>().OrderBy(recorded => recorded.Id, StringComparer.Ordinal)];

    private RecordedCase? Read(Document document)
    {
        var before = Problems.Errors;
        new ShapeCheck(Problems).Check("case", document.Root, CaseShapes.CaseForm);
        var read = document.Root is MapNode map ? Read(map) : null;
        return Problems.Errors == before && !document.IsDamaged ? read : null;
    }

    private RecordedCase? Read(MapNode map)
    {
        var fields = new Fields(draft, null, map);
        var id = fields.Text("case");
        new RequiredKeys(Problems).Check(id?.Value ?? "case", id?.Place ?? map.Place, map, CaseShapes.Case);
        var confirmed = Confirmed(fields);
        var chassis = fields.Text("chassis");
        var read = new RecordedCase
        {
            Id = id is null ? "" : Id(id) ?? "",
            Place = id?.Place ?? map.Place,
            Recorded = fields.Text("recorded") is { } date ? DateReader.ReadDate(date.Text, "recorded", Problems) ?? "" : "",
            Chassis = chassis is not null && EntryBase.IsDeclared(draft, chassis) ? chassis.Value : null,
            Complaint = fields.Named("complaint", Target.Complaint)?.Id,
            Said = fields.Sentence("said"),
            Observations = _observations.Read(fields.Items("observations"), confirmed),
            SeenOnOpening = _observations.Read(fields.Items("seen-on-opening"), []),
            Confirmed = confirmed,
            Damaged = Damaged(fields),
            IsProbable = Verdict(fields),
            Repair = fields.Named("repair", Target.Repair)?.Id,
            Minutes = fields.Amount("minutes"),
            Expect = fields.Map("expect") is { } expect ? Expect(new Fields(draft, null, expect)) : new Expectation(),
            Source = fields.Sentence("source"),
        };
        CheckPack(fields);
        return id is null ? null : read;
    }

    private string? Id(ScalarNode text)
    {
        if (IdWords.Read(text.Text, IdKind.Id, Problems) is not { } id)
        {
            return null;
        }

        if (_ids.TryAdd(id, text.Place))
        {
            return id;
        }

        Problems.Add(ProblemCatalogue.CaseMisplaced, text.Place, $"'{id}' is the id of a case in {_ids[id]} already; give this one another.");
        return null;
    }

    private void CheckPack(Fields fields)
    {
        if (fields.Text("pack") is { } pack && pack.Value != packId && !ReservedWords.IsYamlConstant(pack.Value))
        {
            Problems.Add(
                ProblemCatalogue.CaseMisplaced,
                pack.Place,
                $"'{Excerpt.Of(pack.Value)}' is another pack than '{packId}', in which this case lies; move the case, or mend 'pack'.");
        }
    }

    private ImmutableArray<string> Confirmed(Fields fields)
    {
        if (fields.Has("confirmed") && fields.Items("confirmed") is { Count: 0 })
        {
            Problems.Add(ProblemCatalogue.NoSuchConfirmed, fields.PlaceOf("confirmed"), "'confirmed' names nothing; write the causes found, or '[unlisted]'.");
        }

        var confirmed = new List<string>();
        foreach (var text in fields.Texts("confirmed"))
        {
            foreach (var id in new Names(draft).Ids(text))
            {
                if (IsCause(id, text))
                {
                    confirmed.Add(id);
                }
            }
        }

        return [.. confirmed.Distinct(StringComparer.Ordinal)];
    }

    private bool IsCause(string id, ScalarNode text)
    {
        var found = draft.Find(id);
        if (id == RecordedCase.Unlisted || found is { Section: Section.Causes or Section.Preconditions })
        {
            return true;
        }

        if (!ReservedWords.IsYamlConstant(id))
        {
            var what = found is null ? $"No cause '{Excerpt.Of(id)}' in the pack" : $"'{id}' is {Wording.An(found.Noun)} and no cause";
            var causes = draft.Of(Section.Causes).Concat(draft.Of(Section.Preconditions)).Select(cause => cause.Id);
            Problems.Add(
                ProblemCatalogue.NoSuchConfirmed,
                text.Place,
                $"{what}; name a cause or precondition, or 'unlisted'.{Spelling.DidYouMean(id, causes)}");
        }

        return false;
    }

    private ImmutableArray<NodeGrades> Damaged(Fields fields)
    {
        var damaged = new SortedDictionary<int, NodeGrades>();
        if (fields.Map("damaged") is { } map)
        {
            foreach (var (named, pair) in fields.NamedBy(map, Target.Child))
            {
                if (pair.Value is ScalarNode text && named.Entry is Graded graded && OpenGradesReader.Read(text.Text, graded, Problems) is { } grades)
                {
                    damaged[named.Node] = new NodeGrades(named.Node, grades);
                }
            }
        }

        return [.. damaged.Values];
    }

    private bool Verdict(Fields fields)
    {
        if (fields.Text("verdict") is not { } text || text.Value is "confirmed" or "probable" || ReservedWords.IsYamlConstant(text.Value))
        {
            return fields.Text("verdict")?.Value == "probable";
        }

        Problems.Add(ProblemCatalogue.WrongKindOfValue, text.Place, $"'verdict' is '{Excerpt.Of(text.Value)}'; it takes 'confirmed' or 'probable'.");
        return false;
    }

    private static Expectation Expect(Fields fields) => new()
    {
        Top = fields.Count("top") ?? new Expectation().Top,
        Confidence = fields.Probability("confidence"),
        Hazards = fields.Ids("hazards", Target.Hazard),
        NextCheck = fields.Named("next-check", Target.Check)?.Id,
        NeverCheck = fields.Ids("never-check", Target.Check),
    };
}
