using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Makes checks, access states and repairs.</summary>
internal sealed class WorkBinder(Draft draft) : IEntryBinder
{
    /// <summary>Unless a repair says otherwise a check proves it once.</summary>
    private const int Once = 1;

    public Entry? Bind(Declared declared, Fields fields)
    {
        var title = fields.Sentence("title") ?? declared.Id;
        WorkStep step = declared.Section switch
        {
            Section.Checks => new Check
            {
                Id = declared.Id,
                Index = declared.Index,
                Title = title,
                Gives = Gives(declared, fields),
                SkipIf = fields.Condition("skip-if"),
                Alters = Alters(declared, fields),
            },
            Section.Access => new Access
            {
                Id = declared.Id,
                Index = declared.Index,
                Title = title,
                Excludes = fields.Ids("excludes", Target.Access),
            },
            _ => new Repair
            {
                Id = declared.Id,
                Index = declared.Index,
                Title = title,
                After = fields.Ids("after", Target.Check),
                Parts = fields.Sentences("parts"),
                Fasteners = Fasteners(fields),
                VerifyBy = VerifyBy(declared, fields),
            },
        };
        return WithWork(step, fields);
    }

    /// <summary>A step with what all work may say.</summary>
    /// <param name="step">The step.</param>
    /// <param name="fields">Where it says it.</param>
    /// <param name="minutes">Minutes where it says none.</param>
    /// <param name="skill">Skill where it says none.</param>
    public static WorkStep WithWork(WorkStep step, Fields fields, double minutes = 0, Skill skill = Skill.Workshop) => step with
    {
        Minutes = fields.Amount("minutes") ?? minutes,
        Cost = fields.Cost("cost"),
        Skill = fields.Skill("skill") ?? skill,
        Needs = fields.Ids("needs", Target.Access),
        Tools = fields.Sentences("tools"),
        Hazards = fields.Ids("hazards", Target.Hazard),
        Instructions = fields.Sentences("steps"),
    };

    private ImmutableArray<string> Gives(Declared declared, Fields fields)
    {
        if (fields.Items("gives").Count == 0 && fields.Has("gives"))
        {
            draft.Problems.Add(
                ProblemCatalogue.CheckGivesNothing,
                fields.PlaceOf("gives"),
                $"'{declared.Id}' gives nothing; name the readings, findings or causes it shows.");
        }

        var gives = new List<string>();
        foreach (var (named, text) in fields.NamedIn("gives", Target.Given))
        {
            if (named.Entry is Reading { From: not null } && named.Body.Find("from")?.Value is ScalarNode from)
            {
                draft.Problems.Add(
                    ProblemCatalogue.CheckGivesNothing,
                    text.Place,
                    $"'{declared.Id}' gives '{named.Id}', which is worked out ('from: {Excerpt.Of(from.Value)}') and not measured; name the "
                    + "readings it derives from.");
            }

            gives.Add(named.Id);
        }

        return [.. gives.Distinct(StringComparer.Ordinal)];
    }

    private ImmutableArray<string> Alters(Declared declared, Fields fields)
    {
        var given = fields.Texts("gives").SelectMany(new Names(draft).Ids).ToHashSet(StringComparer.Ordinal);
        var alters = new List<string>();
        foreach (var (named, text) in fields.NamedIn("alters", Target.Altered))
        {
            if (given.Contains(named.Id))
            {
                draft.Problems.Add(
                    ProblemCatalogue.AlteredAndGiven,
                    text.Place,
                    $"'{declared.Id}' alters '{named.Id}' and gives it as well; give the response a finding of its own, such as 'after-{declared.Id}'.");
            }

            alters.Add(named.Id);
        }

        return [.. alters.Distinct(StringComparer.Ordinal)];
    }

    private ImmutableArray<Fastener> Fasteners(Fields fields) =>
    [
        .. fields.Items("fasteners").OfType<MapNode>()
            .Select(map => new Fields(draft, null, map))
            .Select(fastener => new Fastener(fastener.Sentence("at") ?? "", fastener.Quantity("across-flats", "mm"), fastener.Quantity("torque", "N.m"))),
    ];

    private ImmutableArray<Verification> VerifyBy(Declared declared, Fields fields)
    {
        var names = new Names(draft);
        var verifications = new List<Verification>();
        foreach (var item in fields.Items("verify-by"))
        {
            if (item is ScalarNode text)
            {
                verifications.AddRange(names.All(text, declared, Target.Check).Select(check => new Verification(check.Id, Once, [])));
            }
            else if (item is MapNode map)
            {
                verifications.AddRange(Verification(declared, map, names));
            }
        }

        return [.. verifications];
    }

    private IEnumerable<Verification> Verification(Declared declared, MapNode map, Names names)
    {
        var fields = new Fields(draft, declared, map);
        var times = fields.Count("times") ?? Once;
        var findings = fields.Ids("findings", Target.Finding);
        return fields.Text("check") is { } check
            ? names.All(check, declared, Target.Check).Select(named => new Verification(named.Id, times, findings))
            : [];
    }
}
