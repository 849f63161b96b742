using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Reads what findings and effects have in common: grades, background, table, repairs of damage.</summary>
internal sealed class ConsequenceParts(Draft draft, Declared declared, Fields fields)
{
    public ImmutableArray<double> Background() =>
        fields.Map("background") is { } map
            ? new Distributions(draft, fields).Read(map, declared, $"Grades of '{declared.Id}' in 'background'", fields.PlaceOf("background")) ?? Healthy
            : Healthy;

    public GradeTable? Table() => new TableReader(draft, declared, fields).Read();

    public ImmutableArray<ShownGrades> Shows() => new ShowsReader(draft, declared, fields).Read();

    public ImmutableArray<string?> RepairByGrade()
    {
        if (fields.Map("repair") is not { } map)
        {
            return [];
        }

        var names = new Names(draft);
        var repairs = new string?[declared.Grades.Length];
        foreach (var (key, value) in map.Pairs)
        {
            var grade = declared.Grades.IndexOf(key.Value, StringComparer.Ordinal);
            if (grade < 0 && declared.Entry is Graded graded)
            {
                draft.Problems.Add(ProblemCatalogue.NoSuchGrade, key.Place, GradeWords.NoSuchGrade(key.Value, graded));
            }
            else if (value is ScalarNode text && names.One(text, declared, Target.Repair) is { } repair && grade >= 0)
            {
                repairs[grade] = repair.Id;
            }
        }

        return [.. repairs];
    }

    private ImmutableArray<double> Healthy => Distributions.Healthy(declared.Grades.Length);
}
