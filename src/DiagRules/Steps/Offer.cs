using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Rules;

namespace DiagRules.Steps;

/// <summary>Which steps may be offered to whom, and why others may not.</summary>
internal sealed class Offer
{
    private readonly Moment _moment;
    private readonly ILookup<string, RuleLine> _deferrals;
    private readonly TellingNodes _telling;
    private readonly WorkDone? _done;

    public Offer(Moment moment, TellingNodes telling, WorkDone? done = null)
    {
        _moment = moment;
        _telling = telling;
        _done = done;
        _deferrals = moment.Outcomes
            .Where(line => line.Kind == LineKind.Defer)
            .SelectMany(line => line.Rule!.Defers.Select(id => (id, line)))
            .ToLookup(pair => pair.id, pair => pair.line, StringComparer.Ordinal);
    }

    /// <summary>Rules that keep a step back.</summary>
    public IEnumerable<RuleLine> DeferralsOf(WorkStep step) => _deferrals[step.Id];

    /// <summary>Why a check makes no sense now; <see langword="null"/> when it does.</summary>
    public string? Pointless(Check check)
    {
        if (_done?.Checks.Contains(check.Id) == true)
        {
            return "it has been done";
        }

        if (check.SkipIf is { } skipIf && skipIf.Evaluate(_moment.Views.Lenient) == Truth.True)
        {
            return $"it makes no sense while '{skipIf.Text}'";
        }

        return _telling.IsAnswered(check) ? "its answer is known" : null;
    }

    /// <summary>Why a step cannot be offered to this person now; <see langword="null"/> when it can.</summary>
    public string? Refusal(WorkStep step)
    {
        if (DeferralsOf(step).FirstOrDefault() is { } deferral)
        {
            return $"'{deferral.Source}' keeps it back: {deferral.Rule!.Reason ?? deferral.Rule.Advise ?? deferral.When.Text}";
        }

        if (step is Check check && Unanswered(check))
        {
            return "it was asked and could not be told";
        }

        return _moment.Options.Skill is { } skill && SkillOf(step) > skill
            ? $"it takes {Words.Of(SkillOf(step))}"
            : MissingTools(step) is { Count: > 0 } missing ? $"it takes {string.Join(", ", missing)}" : null;
    }

    /// <summary>The least skill for a step, access included.</summary>
    public Skill SkillOf(WorkStep step) =>
        OpenAccess.WithNeeds(_moment.Pack, step.Needs).Select(access => access.Skill).Append(step.Skill).Max();

    private List<string> MissingTools(WorkStep step)
    {
        var tools = _moment.Options.Tools;
        return tools is null
            ? []
            : [.. OpenAccess.WithNeeds(_moment.Pack, step.Needs).SelectMany(access => access.Tools).Concat(step.Tools)
                .Where(tool => !tools.Contains(tool, StringComparer.OrdinalIgnoreCase))
                .Distinct(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>Somebody of the same or greater skill could not tell.</summary>
    private bool Unanswered(Check check)
    {
        var asking = _moment.Options.Skill ?? Skill.Workshop;
        return check.Gives.All(id => _moment.Pack.Find(id) switch
        {
            Reading reading => _moment.Observed.Readings[reading.Index] is not null || CouldNotTell(_moment.Pack.Nodes.Length + reading.Index),
            Graded graded => _moment.Known[graded.Node] is not null || CouldNotTell(graded.Node),
            _ => true,
        });

        bool CouldNotTell(int slot) => _moment.Observed.Unanswered[slot] is { } by && by >= asking;
    }
}
