using DiagRules.Model;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Steps that a pack implies: a question that no check gives is a check, and what restores a precondition is a repair.</summary>
internal sealed class ImpliedSteps(Draft draft)
{
    private const double QuestionMinutes = 1;
    private const double RestoreMinutes = 2;

    /// <summary>Finds out which findings and preconditions imply a step; before anything refers to them.</summary>
    public void Mark()
    {
        var names = new Names(draft);
        var given = draft.Of(Section.Checks)
            .SelectMany(check => check.Body.Find("gives")?.Value is ListNode list ? list.Items.OfType<ScalarNode>() : [])
            .SelectMany(names.Ids)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var finding in draft.Of(Section.Findings))
        {
            finding.IsAsked = finding.Body.Find("question") is not null && !given.Contains(finding.Id);
        }

        foreach (var precondition in draft.Of(Section.Preconditions))
        {
            precondition.IsRestored = precondition.Body.Find("restore") is not null && precondition.Body.Find("repair") is null;
        }
    }

    /// <summary>
    /// Checks that are questions, in order of ids. What a finding says on asking is read, and so checked, where nobody asks, too.
    /// </summary>
    public IReadOnlyList<Check> Questions(int firstIndex)
    {
        var questions = new List<Check>();
        foreach (var finding in draft.Of(Section.Findings).Where(finding => finding.Entry is not null))
        {
            var question = Question(finding, firstIndex + questions.Count);
            if (finding.IsAsked)
            {
                questions.Add(question);
            }
        }

        return questions;
    }

    /// <summary>Repairs that restore a precondition, in order of ids.</summary>
    public IEnumerable<Repair> Restores(int firstIndex) =>
        draft.Of(Section.Preconditions)
            .Where(precondition => precondition is { IsRestored: true, Entry: Cause { Precondition.Restore: not null } })
            .Select((precondition, i) => Restore(precondition, firstIndex + i));

    private Check Question(Declared declared, int index)
    {
        var fields = new Fields(draft, declared, declared.Body);
        var finding = (Finding)declared.Entry!;
        var check = new Check
        {
            Id = declared.Id,
            Index = index,
            Title = finding.Question ?? finding.Title,
            Gives = [declared.Id],
            SkipIf = fields.Condition("skip-if"),
            IsQuestion = true,
        };
        return EntryBase.Finish((Check)WorkBinder.WithWork(check, fields, QuestionMinutes, Skill.Owner), declared);
    }

    private static Repair Restore(Declared declared, int index)
    {
        var precondition = (Cause)declared.Entry!;
        var repair = new Repair
        {
            Id = declared.Id,
            Index = index,
            Title = precondition.Precondition!.Restore!,
            Minutes = RestoreMinutes,
            Skill = Skill.Owner,
            Hazards = precondition.Hazards,
            IsRestore = true,
        };
        return EntryBase.Finish(repair, declared);
    }
}
