using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Makes findings.</summary>
internal sealed class FindingBinder(Draft draft) : IEntryBinder
{
    public Entry? Bind(Declared declared, Fields fields)
    {
        if (!fields.Has("title") && !fields.Has("question"))
        {
            var title = declared.Shape.Find("title")! with { Name = "title' or 'question" };
            new RequiredKeys(draft.Problems).Report(declared.Id, declared.Place, declared.Shape, title);
        }

        if (declared.Grades.IsEmpty)
        {
            return null;
        }

        var parts = new ConsequenceParts(draft, declared, fields);
        var question = fields.Sentence("question");
        return new Finding
        {
            Id = declared.Id,
            Index = declared.Index,
            Node = declared.Node,
            Grades = declared.Grades,
            Title = fields.Sentence("title") ?? question ?? declared.Id,
            Question = question,
            IsLasting = fields.Flag("lasting"),
            Bands = fields.Map("bands") is { } bands ? new BandsReader(draft, declared).Read(bands, fields.PlaceOf("bands")) : null,
            Reads = Reads(declared, fields),
            Background = parts.Background(),
            Table = parts.Table(),
            Shows = parts.Shows(),
            RepairByGrade = parts.RepairByGrade(),
        };
    }

    private ImmutableArray<ReadGrade> Reads(Declared declared, Fields fields)
    {
        var reads = new SortedDictionary<int, ReadGrade>();
        foreach (var (key, value) in fields.Map("read")?.Pairs ?? [])
        {
            var grade = declared.Grades.IndexOf(key.Value, StringComparer.Ordinal);
            if (grade < 0)
            {
                draft.Problems.Add(ProblemCatalogue.NoSuchGrade, key.Place, GradeWords.NoSuchGrade(key.Value, (Graded)declared.Entry!));
            }

            if (value is ScalarNode text && fields.Condition(text) is { } condition && grade >= 0)
            {
                reads[grade] = new ReadGrade(grade, condition);
            }
        }

        return [.. reads.Values];
    }
}
