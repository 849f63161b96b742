using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Checks;

/// <summary>Rules that put a check off for ever: until something is known that only it gives, or all checks at once.</summary>
internal sealed class Deferrals(CheckScope scope)
{
    private readonly Decided _decided = new(scope);

    public void Run()
    {
        var checks = scope.Of<Check>(Section.Checks).Select(check => check.Declared).Concat(scope.Draft.Of(Section.Findings).Where(finding => finding.IsAsked)).ToList();
        var givers = checks.SelectMany(check => Gives(check).Distinct().Select(id => (id, check))).ToLookup(pair => pair.id, pair => pair.check);
        foreach (var (declared, rule) in scope.Of<Rule>(Section.Rules))
        {
            foreach (var awaited in Awaited(rule.When).Where(mention => givers[mention.To.Id].Any() && givers[mention.To.Id].All(check => rule.Defers.Contains(check.Id))))
            {
                var deferred = Wording.And(givers[awaited.To.Id].Select(check => check.Id));
                scope.Error(
                    ProblemCatalogue.DeferredForEver,
                    awaited.Place,
                    $"'{declared.Id}' defers {deferred} as long as '{awaited.To.Id}' is unknown, and nothing else gives '{awaited.To.Id}'; "
                    + "defer something else, or ask for another thing.");
            }
        }

        FindNothingLeft(checks);
    }

    /// <summary>At the beginning of a job nothing is known but the parameters; rules that hold even then must leave something to do.</summary>
    private void FindNothingLeft(List<Declared> checks)
    {
        var facts = new ParameterFacts(scope.Draft, scope.Draft.Chassis.IsEmpty ? null : scope.Draft.Chassis[0]);
        var rules = scope.Of<Rule>(Section.Rules).Where(rule => rule.Entry.Defers.Length > 0 && rule.Entry.When.Evaluate(facts) == Truth.True).ToList();
        var deferred = rules.SelectMany(rule => rule.Entry.Defers).ToHashSet(StringComparer.Ordinal);
        if (rules.Count > 0 && checks.Count > 0 && checks.All(check => deferred.Contains(check.Id)))
        {
            scope.Error(
                ProblemCatalogue.DeferredForEver,
                rules[0].Declared.Place,
                $"'{rules[0].Declared.Id}'{(rules.Count > 1 ? $" with {Wording.And(rules.Skip(1).Select(rule => rule.Declared.Id))}" : "")} "
                + "defers every check while nothing is known, so a job cannot begin; leave one of them open.");
        }
    }

    private IEnumerable<string> Gives(Declared check) => check.Entry is Check { Gives: var gives } ? gives.Concat(_decided.By(check)) : [check.Id];

    /// <summary>What must be unknown for the whole condition to hold.</summary>
    private IEnumerable<Mention> Awaited(Condition when) => when switch
    {
        AllOf all => all.Parts.SelectMany(Awaited),
        KnownGrade { WantsKnown: false } or KnownReading { WantsKnown: false } => Mention.In(when, scope.Draft),
        _ => [],
    };
}
