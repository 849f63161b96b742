using DiagRules.Model;
using DiagRules.Model.Conditions;

namespace DiagRules.Rules;

/// <summary>Lists everything a pack lets conclude on one chassis, as lines.</summary>
internal static class RuleLines
{
    public static List<RuleLine> Of(Pack pack, string? chassis)
    {
        var lines = new List<RuleLine>();
        foreach (var finding in pack.Findings.Where(finding => finding.IsOn(chassis)))
        {
            lines.AddRange(Reads(finding));
        }

        foreach (var cause in pack.Causes.Where(cause => cause.Precondition is not null && cause.IsOn(chassis)))
        {
            lines.AddRange(Musts(cause, cause.Precondition!.Must));
        }

        foreach (var rule in pack.Rules.Where(rule => rule.IsOn(chassis)))
        {
            lines.AddRange(Consequences(rule));
        }

        return lines;
    }

    private static IEnumerable<RuleLine> Reads(Finding finding)
    {
        foreach (var read in BandConditions.ReadsOf(finding))
        {
            var strict = new RuleLine
            {
                Kind = LineKind.Read,
                Source = finding.Id,
                When = read.When,
                World = World.Strict,
                Node = finding.Node,
                Grades = GradeSet.Of(read.Grade),
            };
            yield return strict;
            yield return new RuleLine
            {
                Kind = LineKind.Read,
                Source = finding.Id,
                When = read.When,
                World = World.Lenient,
                Node = finding.Node,
                Grades = strict.Grades,
                StrictTwin = strict,
            };
        }
    }

    private static IEnumerable<RuleLine> Musts(Cause cause, Condition must)
    {
        // Certainly true: the precondition is met, so it is not what stops the machine. Certainly false: it is not met.
        yield return Line(must, 0);
        yield return Line(new Negation(must, $"not ({must.Text})", must.Place), 1);

        RuleLine Line(Condition when, int grade) => new()
        {
            Kind = LineKind.Must,
            Source = cause.Id,
            When = when,
            World = World.Strict,
            Node = cause.Node,
            Grades = GradeSet.Of(grade),
        };
    }

    private static IEnumerable<RuleLine> Consequences(Rule rule)
    {
        foreach (var settled in rule.Settles)
        {
            yield return Line(LineKind.Settle, World.Strict, settled.Node, settled.Grades);
        }

        foreach (var cause in rule.RulesOut)
        {
            yield return Line(LineKind.RuleOut, World.Strict, cause, GradeSet.Of(0));
        }

        if (rule.Advise is not null)
        {
            yield return Line(LineKind.Advice, World.Lenient);
        }

        if (!rule.Hazards.IsEmpty)
        {
            yield return Line(LineKind.Hazards, World.Lenient);
        }

        if (!rule.Defers.IsEmpty)
        {
            yield return Line(LineKind.Defer, World.Lenient);
        }

        RuleLine Line(LineKind kind, World world, int node = -1, GradeSet grades = default) => new()
        {
            Kind = kind,
            Source = rule.Id,
            When = rule.When,
            World = world,
            Node = node,
            Grades = grades,
            Rule = rule,
        };
    }
}
