using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Checks;

/// <summary>Conditions that decide nothing, and pairs that get in each other's way.</summary>
internal sealed class ConditionWarnings(CheckScope scope)
{
    private readonly Witness _witness = new(scope);

    public void Run()
    {
        foreach (var use in ConditionUse.In(scope))
        {
            NeverOrAlways(use);
        }

        ReadsThatOverlap();
        RulesThatClash();
    }

    private void NeverOrAlways(ConditionUse use)
    {
        var chassis = scope.Draft.DifferingChassis.Where(code => code is null || use.Owner.IsOn(code)).ToList();
        if (chassis.Count == 0 || use.Condition is Constant)
        {
            return;
        }

        var rooms = chassis.Select(code => new Room(scope, code)).ToList();
        if (rooms.All(room => !room.Take(use.Condition, holds: true)) && rooms[0].Decider is var (part, before))
        {
            var because = before is not null ? $"it does not meet '{before.Text}'"
                : Range(part) is { } range ? $"it lies outside what is plausible ({range})"
                : "nothing is left for it";
            scope.Warn(
                ProblemCatalogue.NeverOrAlways,
                part.Place,
                $"'{part.Text}' makes this condition of '{use.Owner.Id}' never hold: {because}; mend one of the two.",
                use.Owner);
        }
        else if (chassis.All(code => !new Room(scope, code).Take(use.Condition, holds: false)))
        {
            scope.Warn(
                ProblemCatalogue.NeverOrAlways,
                use.Condition.Place,
                $"'{Excerpt.Of(use.Condition.Text)}' of '{use.Owner.Id}' holds whatever is observed, so it decides nothing; mend it, or take it out.",
                use.Owner);
        }
    }

    private static string? Range(Condition part) =>
        part is Comparison comparison && new[] { comparison.Left, comparison.Right }.OfType<ReadingTerm>().FirstOrDefault()?.Reading.Plausible is { } range ? range.ToString() : null;

    private void ReadsThatOverlap()
    {
        foreach (var (declared, finding) in scope.Of<Finding>(Section.Findings))
        {
            foreach (var (first, second) in Pairs(finding.Reads))
            {
                if (_witness.Find(first.When, second.When) is { } values)
                {
                    scope.Warn(
                        ProblemCatalogue.ReadsOverlap,
                        second.When.Place,
                        $"'{declared.Id}' can be read as '{finding.Grades[first.Grade]}' and as '{finding.Grades[second.Grade]}' at once, for "
                        + $"example at {values}; then the two contradict each other. Part them.",
                        declared);
                }
            }
        }
    }

    private void RulesThatClash()
    {
        var settled = scope.Of<Rule>(Section.Rules).SelectMany(rule => rule.Entry.Settles.Select(settles => (rule.Declared, rule.Entry, Settles: settles))).ToList();
        foreach (var finding in settled.GroupBy(rule => rule.Settles.Node))
        {
            foreach (var (first, second) in Pairs(finding.ToImmutableArray()))
            {
                if (first.Settles.Grades != second.Settles.Grades && _witness.Find(first.Entry.When, second.Entry.When) is { } values)
                {
                    var node = scope.Draft.Node(finding.Key);
                    scope.Warn(
                        ProblemCatalogue.RulesClash,
                        second.Declared.Place,
                        $"'{second.Declared.Id}' settles '{node.Id}' as '{node.Grades[second.Settles.Grades.First]}' and "
                        + $"'{first.Declared.Id}' as '{node.Grades[first.Settles.Grades.First]}' under one condition, for example at {values}. Part them.",
                        second.Declared,
                        first.Declared);
                }
            }
        }
    }

    private static IEnumerable<(T First, T Second)> Pairs<T>(ImmutableArray<T> items)
    {
        for (var i = 0; i < items.Length; i++)
        {
            for (var j = i + 1; j < items.Length; j++)
            {
                yield return (items[i], items[j]);
            }
        }
    }
}
