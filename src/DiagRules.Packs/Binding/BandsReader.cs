using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Reads <c>bands</c>: grade, limit, grade ... in rising value.</summary>
internal sealed class BandsReader(Draft draft, Declared finding)
{
    public Bands? Read(MapNode map, SourcePlace place)
    {
        var fields = new Fields(draft, finding, map);
        var condition = fields.Condition("if");
        var reading = fields.Named("of", Target.Reading)?.Entry as Reading;
        var items = fields.Items("rising");
        if (reading is null || items.Count == 0 || items.Any(item => item is not ScalarNode))
        {
            return null;
        }

        var before = draft.Problems.Count;
        var texts = items.Cast<ScalarNode>().ToList();
        if (texts.Count < 3 || texts.Count % 2 == 0)
        {
            draft.Problems.Add(
                ProblemCatalogue.WrongKindOfValue,
                fields.PlaceOf("rising"),
                $"'rising' of '{finding.Id}' has {texts.Count} item{(texts.Count == 1 ? "" : "s")}; it alternates grade, limit, grade and "
                + $"ends with a grade, such as '[{finding.Grades[0]}, 0.3 V, {finding.Grades[1]}]'.");
            return null;
        }

        var grades = texts.Where((_, i) => i % 2 == 0).Select(Grade).ToImmutableArray();
        var limits = texts.Where((_, i) => i % 2 == 1).Select(text => fields.Term(text, TermType.Of(reading.Unit))).ToImmutableArray();
        if (draft.Problems.Count > before || limits.Any(limit => limit is null))
        {
            return null;
        }

        CheckOrder(texts, limits!);
        return new Bands(reading, grades, limits!, condition, place);
    }

    private int Grade(ScalarNode text)
    {
        var grade = finding.Grades.IndexOf(text.Value, StringComparer.Ordinal);
        if (grade < 0)
        {
            draft.Problems.Add(ProblemCatalogue.NoSuchGrade, text.Place, GradeWords.NoSuchGrade(text.Value, (Graded)finding.Entry!));
        }

        return grade;
    }

    /// <summary>Limits that are known without observations must rise, on every chassis.</summary>
    private void CheckOrder(List<ScalarNode> texts, ImmutableArray<Term> limits)
    {
        var chassis = draft.DifferingChassis.Where(code => code is null || finding.IsOn(code)).ToList();
        for (var i = 1; i < limits.Length; i++)
        {
            foreach (var code in chassis)
            {
                var facts = new ParameterFacts(draft, code);
                var (lower, upper) = (limits[i - 1].Evaluate(facts).Value, limits[i].Evaluate(facts).Value);
                if (upper <= lower)
                {
                    ReportOrder(texts, i, code);
                    break;
                }
            }
        }
    }

    private void ReportOrder(List<ScalarNode> texts, int limit, string? chassis)
    {
        var (lower, grade, upper) = (texts[(2 * limit) - 1], texts[2 * limit], texts[(2 * limit) + 1]);
        var where = chassis is not null && draft.Chassis.Length > 1 ? $" on chassis '{chassis}'" : "";
        draft.Problems.Add(
            ProblemCatalogue.OutOfOrder,
            upper.Place,
            $"'{upper.Value}' is not above '{lower.Value}'{where}, so nothing is left for the grade '{grade.Value}' of '{finding.Id}'; write "
            + "the limits in rising order.");
    }
}
