using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Makes rules.</summary>
internal sealed class RuleBinder(Draft draft) : IEntryBinder
{
    private static readonly string[] Consequences = ["settles", "rule-out", "advise", "hazards", "defer"];

    public Entry? Bind(Declared declared, Fields fields)
    {
        Require(declared, fields);
        var advise = fields.Sentence("advise");
        var reason = fields.Sentence("reason");
        var settles = Settles(declared, fields);
        var rulesOut = fields.NamedIn("rule-out", Target.Cause).Select(named => named.Named.Node).Distinct().Order().ToImmutableArray();
        var hazards = fields.Ids("hazards", Target.Hazard);
        var defers = fields.Ids("defer", Target.Step);
        return fields.Condition("when") is not { } when ? null : new Rule
        {
            Id = declared.Id,
            Index = declared.Index,
            Title = advise ?? reason ?? declared.Id,
            When = when,
            Settles = settles,
            RulesOut = rulesOut,
            Advise = advise,
            Hazards = hazards,
            Defers = defers,
            Reason = reason,
        };
    }

    private void Require(Declared declared, Fields fields)
    {
        if (!fields.Has("when"))
        {
            draft.Problems.Add(
                ProblemCatalogue.RuleIncomplete,
                declared.Place,
                $"'{declared.Id}' has no 'when'; say when it applies, for example 'when: pump-fuse is blown'.");
        }

        if (!Consequences.Any(fields.Has))
        {
            draft.Problems.Add(
                ProblemCatalogue.RuleIncomplete,
                declared.Place,
                $"'{declared.Id}' has no consequence; add one or more of {Wording.And(Consequences)}.");
        }
    }

    private ImmutableArray<NodeGrades> Settles(Declared declared, Fields fields)
    {
        if (fields.Map("settles") is not { } map)
        {
            return [];
        }

        var settles = new SortedDictionary<int, NodeGrades>();
        foreach (var (named, pair) in fields.NamedBy(map, Target.AnyFinding))
        {
            if (named.Section != Section.Findings)
            {
                ReportKind(declared, named, pair.Key);
            }
            else if (pair.Value is ScalarNode text && named.Entry is Graded graded && OpenGradesReader.ReadOne(text.Text, graded, draft.Problems) is { } grade)
            {
                settles[named.Node] = new NodeGrades(named.Node, GradeSet.Of(grade));
            }
        }

        return [.. settles.Values];
    }

    private void ReportKind(Declared rule, Declared named, ScalarNode key)
    {
        var isOwnKind = named.Section is Section.Effects or Section.Readings;
        var remedy = isOwnKind ? "make it a finding" : named.Section is Section.Causes or Section.Preconditions ? "a cause is ruled out with 'rule-out', or found by what it shows" : "settle a finding";
        draft.Problems.Add(
            isOwnKind ? ProblemCatalogue.SettlesWrongKind : ProblemCatalogue.WrongSection,
            key.Place,
            $"'{rule.Id}' settles '{named.Id}', which is {Wording.An(named.Noun)}; rules settle findings: {remedy}.");
    }
}
