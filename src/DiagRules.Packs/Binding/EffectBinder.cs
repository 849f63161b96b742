using DiagRules.Model;

namespace DiagRules.Packs.Binding;

/// <summary>Makes effects.</summary>
internal sealed class EffectBinder(Draft draft) : IEntryBinder
{
    public Entry? Bind(Declared declared, Fields fields)
    {
        if (declared.Grades.IsEmpty)
        {
            return null;
        }

        var parts = new ConsequenceParts(draft, declared, fields);
        return new Effect
        {
            Id = declared.Id,
            Index = declared.Index,
            Node = declared.Node,
            Grades = declared.Grades,
            Title = fields.Sentence("title") ?? declared.Id,
            Background = parts.Background(),
            Table = parts.Table(),
            Shows = parts.Shows(),
            RepairByGrade = parts.RepairByGrade(),
        };
    }
}
