using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Reads what every entry may say: the chassis it is for, and the warnings it accepts.</summary>
internal static class EntryBase
{
    /// <summary>An entry with what its declaration knows put in.</summary>
    public static T Finish<T>(T entry, Declared declared)
        where T : Entry =>
        (T)((Entry)entry with { Place = declared.Place, Only = declared.Only, Accepts = declared.Accepts, HostKeys = HostKeys.Read(declared.Body) });

    /// <summary>Chassis codes, each of them declared by the pack.</summary>
    public static ImmutableArray<string> Only(Draft draft, MapNode body) =>
        body.Find("only")?.Value is ListNode list ? [.. list.Items.OfType<ScalarNode>().Where(code => IsDeclared(draft, code)).Select(code => code.Value)] : [];

    public static bool IsDeclared(Draft draft, ScalarNode code)
    {
        if (draft.HasChassis(code.Value))
        {
            return true;
        }

        var known = draft.Chassis.IsEmpty ? "pack.yaml has no 'chassis'" : $"pack.yaml has {Wording.And(draft.Chassis)}";
        draft.Problems.Add(
            ProblemCatalogue.ChassisNotDeclared,
            code.Place,
            $"No chassis '{Excerpt.Of(code.Value)}'; {known}.{Spelling.DidYouMean(code.Value, draft.Chassis)}");
        return false;
    }

    /// <summary>Codes of warnings with the reasons for which they are accepted.</summary>
    public static ImmutableDictionary<string, string> Accepts(Fields fields, ProblemSink problems)
    {
        if (fields.Map("accepts") is not { } map)
        {
            return ImmutableDictionary<string, string>.Empty;
        }

        var accepted = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var (key, value) in map.Pairs)
        {
            var descriptor = ProblemCatalogue.All.FirstOrDefault(known => known.Code == key.Value);
            if (descriptor is null)
            {
                problems.Add(
                    ProblemCatalogue.NoSuchId,
                    key.Place,
                    $"No problem code '{Excerpt.Of(key.Value)}'.{Spelling.DidYouMean(key.Value, ProblemCatalogue.All.Select(known => known.Code))}");
            }
            else if (descriptor.Severity == Severity.Error)
            {
                problems.Add(
                    ProblemCatalogue.WrongKindOfValue,
                    key.Place,
                    $"'{key.Value}' ({descriptor.Title}) is an error, and only warnings can be accepted; mend what it reports.");
            }
            else if (value is ScalarNode reason)
            {
                accepted[key.Value] = fields.Sentence(reason);
            }
        }

        return accepted.ToImmutable();
    }
}
