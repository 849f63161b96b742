using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Makes causes and preconditions.</summary>
internal sealed class CauseBinder(Draft draft) : IEntryBinder
{
    private const double HardlyEver = 0.02;

    public Entry? Bind(Declared declared, Fields fields)
    {
        RequireWeight(declared, fields);
        var isPrecondition = declared.Section == Section.Preconditions;
        var must = fields.Condition("must");
        if (isPrecondition && must is null)
        {
            must = new Model.Conditions.Constant(Model.Conditions.Truth.Unknown, "", declared.Place);
        }

        return new Cause
        {
            Id = declared.Id,
            Index = declared.Index,
            Node = declared.Node,
            Grades = Cause.AbsentPresent,
            Title = fields.Sentence("title") ?? declared.Id,
            System = fields.Text("system")?.Value,
            Share = fields.Share("share", declared.Id) / Parts(fields, "share"),
            Probability = fields.Probability("probability") / Parts(fields, "probability"),
            Shows = Shows(declared, fields),
            Repairs = Repairs(declared, fields),
            Hazards = fields.Ids("hazards", Target.Hazard),
            Reason = fields.Sentence("reason"),
            Precondition = isPrecondition ? new Precondition(must!, fields.Sentence("restore"), fields.Sentence("if-not")) : null,
        };
    }

    /// <summary>The share of a template is that of all its copies together.</summary>
    private static int Parts(Fields fields, string key) => fields.Text(key)?.Copy?.Count ?? 1;

    private void RequireWeight(Declared declared, Fields fields)
    {
        if (!fields.Has("share") && !fields.Has("probability"))
        {
            new RequiredKeys(draft.Problems).Report(declared.Id, declared.Place, declared.Shape, declared.Shape.Find("share")!);
        }
    }

    private ImmutableArray<ShownGrades> Shows(Declared declared, Fields fields)
    {
        var reader = new ShowsReader(draft, declared, fields);
        var shows = reader.Read();
        if (reader.ShowsPattern)
        {
            if (fields.Has("intermittent"))
            {
                draft.Problems.Add(
                    ProblemCatalogue.DuplicateKey,
                    fields.PlaceOf("intermittent"),
                    $"'intermittent' of '{declared.Id}' says what its 'shows' says of 'pattern'; keep one of them.");
            }

            return shows;
        }

        reader.AddPattern(fields.Probability("intermittent") ?? HardlyEver, fields.Has("intermittent") ? fields.PlaceOf("intermittent") : declared.Place);
        return reader.All();
    }

    private static ImmutableArray<Cure> Repairs(Declared declared, Fields fields)
    {
        if (fields.Map("repair") is { } map)
        {
            return
            [
                .. fields.NamedBy(map, Target.ListedRepair)
                    .Select(named => named.Pair.Value is ScalarNode text && fields.Probability(text) is { } surely ? new Cure(named.Named.Id, surely) : (Cure?)null)
                    .OfType<Cure>()
                    .OrderBy(cure => cure.Repair, StringComparer.Ordinal),
            ];
        }

        if (fields.Named("repair", Target.ListedRepair) is { } repair)
        {
            return [new Cure(repair.Id, 1)];
        }

        return declared.IsRestored ? [new Cure(declared.Id, 1)] : [];
    }
}
