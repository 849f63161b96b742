using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Reasoning.Planning;
using DiagRules.Results;
using NextStep = DiagRules.Results.NextStep;
using PlannedKind = DiagRules.Reasoning.Planning.StepKind;
using StepKind = DiagRules.Results.StepKind;

namespace DiagRules.Steps;

/// <summary>Puts a plan into words: what to do next, at what price, and why.</summary>
internal sealed class StepWriter(Moment moment, SituationBuilder builder, Situation situation)
{
    /// <summary>A shift of confidence below this is not worth naming.</summary>
    private const double WorthNaming = 0.03;
    private const int MostNamed = 4;
    private const int MostAnswers = 6;

    public ImmutableArray<NextStep> Write(Plan plan)
    {
        var most = moment.Options.Steps <= 0 ? int.MaxValue : moment.Options.Steps;
        return [.. plan.Steps.Where((step, place) => place == 0 || !step.IsIdle).Select((step, place) => Write(step, isBest: place == 0)).Where(IsWorthwhile).Take(most)];
    }

    /// <summary>A check that moves nobody and that no repair waits for only costs time, however little.</summary>
    private bool IsWorthwhile(NextStep step, int place) =>
        place == 0 || step.Kind != StepKind.Check || !step.TellsApart.IsEmpty || builder.Repairs.Any(repair => repair.After.Contains(step.Id));

    private NextStep Write(Reasoning.Planning.NextStep step, bool isBest) => step.Kind switch
    {
        PlannedKind.Check => WriteCheck(step),
        PlannedKind.Repair => WriteRepair(step, isBest),
        _ => new NextStep
        {
            Kind = StepKind.Specialist,
            Id = "specialist",
            Title = "Give the job to a specialist",
            Skill = Skill.Owner,
            Minutes = 0,
            Cost = step.Cost,
            ExpectedCostAfter = 0,
            Why = "It ends the job whatever the cause is.",
        },
    };

    private NextStep WriteCheck(Reasoning.Planning.NextStep step)
    {
        var check = builder.Checks[step.Index];
        var forecast = situation.Forecast(step.Index);
        var shifts = Shifts(forecast);
        return Describe(check, step) with
        {
            Kind = StepKind.Check,
            TellsApart = [.. shifts],
            Answers = Answers(step.Index, forecast),
            Why = WhyCheck(check, shifts),
        };
    }

    private NextStep WriteRepair(Reasoning.Planning.NextStep step, bool isBest)
    {
        var repair = builder.Repairs[step.Index];
        var cured = situation.Repairs[step.Index].Cures
            .Select(cure => (Cause: moment.Network.Causes[cure.Cause], Chance: moment.ConfidenceAt(cure.Cause) * cure.Probability))
            .Where(pair => pair.Chance > 0)
            .OrderByDescending(pair => pair.Chance).ThenBy(pair => pair.Cause.Id, StringComparer.Ordinal)
            .ToList();
        var chance = cured.Sum(pair => pair.Chance);
        var named = Words.Join([.. cured.Take(2).Select(pair => $"'{pair.Cause.Title}'")]);
        return Describe(repair, step) with
        {
            Kind = StepKind.Repair,
            TellsApart = [.. cured.Take(MostNamed).Select(pair => pair.Cause.Id)],
            Why = $"It puts {named} right and ends the complaint with a chance of {Words.Percent(chance)}" + (isBest ? "; checking more first would cost more than it saves." : "."),
        };
    }

    private NextStep Describe(WorkStep step, Reasoning.Planning.NextStep planned)
    {
        var opens = OpenAccess.WithNeeds(moment.Pack, step.Needs).Where(access => !builder.Open.Contains(access.Id)).ToList();
        return new NextStep
        {
            Kind = StepKind.Check,
            Id = step.Id,
            Title = step.Title,
            Skill = builder.Offer.SkillOf(step),
            Minutes = step.Minutes + opens.Sum(access => access.Minutes),
            Cost = planned.Cost,
            ExpectedCostAfter = planned.CostAfter,
            Opens = [.. opens.Select(access => access.Id)],
            Hazards = [.. step.Hazards.Concat(opens.SelectMany(access => access.Hazards)).Distinct().OrderBy(Gravity).ThenBy(id => id, StringComparer.Ordinal)],
            Why = "",
        };
    }

    private int Gravity(string hazard) => -(int)(moment.Pack.Find<Hazard>(hazard)?.SignalWord ?? SignalWord.Notice);

    /// <summary>Causes whose standing some answer moves, the most moved first.</summary>
    private List<string> Shifts(IReadOnlyList<OutcomeForecast> forecast)
    {
        var moved = moment.Network.Causes.Select((cause, position) => (
            cause.Id,
            Shift: forecast.Sum(outcome => outcome.Probability * Math.Abs(outcome.Probabilities[position] - situation.Probabilities[position])),
            Most: forecast.Max(outcome => Math.Abs(outcome.Probabilities[position] - situation.Probabilities[position]))));
        return [.. moved
            .Where(cause => cause.Most >= WorthNaming)
            .OrderByDescending(cause => cause.Shift).ThenBy(cause => cause.Id, StringComparer.Ordinal)
            .Take(MostNamed)
            .Select(cause => cause.Id)];
    }

    /// <summary>What each answer would say; nothing for a check that decides nothing and is only done because a repair waits for it.</summary>
    private ImmutableArray<AnswerOutlook> Answers(int check, IReadOnlyList<OutcomeForecast> forecast) => builder.Forecasts[check].IsEmpty
        ? []
        : [.. forecast.OrderByDescending(outcome => outcome.Probability).Take(MostAnswers).Select(outcome =>
        {
            var leads = Enumerable.Range(0, outcome.Probabilities.Count).MaxBy(position => outcome.Probabilities[position]);
            var isListed = outcome.Probabilities[leads] >= outcome.Unlisted;
            return new AnswerOutlook(
                Name(builder.Forecasts[check][outcome.Outcome]),
                outcome.Probability,
                isListed ? moment.Network.Causes[leads].Id : Model.Cases.RecordedCase.Unlisted,
                isListed ? outcome.Probabilities[leads] : outcome.Unlisted);
        })];

    private string Name(ForecastOutcome answer) => string.Join(" and ", answer.Grades.Select(pair =>
    {
        var graded = moment.Pack.Nodes[pair.Node];
        return $"{graded.Id} is {graded.Grades[pair.Grade]}";
    }));

    private string WhyCheck(Check check, List<string> shifts)
    {
        var names = shifts.Take(3).Select(id => $"'{moment.Pack.Nodes.First(node => node.Id == id).Title}'").ToList();
        if (names.Count == 0)
        {
            return builder.Repairs.FirstOrDefault(repair => repair.After.Contains(check.Id)) is { } repair
                ? $"It must be done before '{repair.Title}'."
                : "It changes little by itself, but it is cheap.";
        }

        return names.Count == 1 ? $"It speaks for or against {names[0]}." : $"It tells {Words.Join(names, "from")}.";
    }
}
