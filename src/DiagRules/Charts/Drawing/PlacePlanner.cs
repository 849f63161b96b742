using System.Collections.Immutable;
using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Reasoning.Planning;
using DiagRules.Results;
using DiagRules.Rules;
using DiagRules.Steps;
using StepKind = DiagRules.Results.StepKind;

namespace DiagRules.Charts.Drawing;

/// <summary>Says what a session would do at a place, and what can come of it.</summary>
internal sealed class PlacePlanner(DiagnosisSession session)
{
    private const int MostSuspects = 3;

    private readonly DiagnosisEngine _engine = session.Engine;
    private readonly ImmutableArray<Observation> _first = [.. session.Record];

    // One step is all a box can show.
    private readonly SessionOptions _options = new() { Complaint = session.Options.Complaint, Skill = session.Options.Skill, Tools = session.Options.Tools, Steps = 1 };

    /// <summary>What holds before the first step: told at the head of the chart, not in its boxes.</summary>
    public ImmutableHashSet<string> ToldAtFirst()
    {
        var moment = session.Now();
        return [.. Raised(moment), .. AdviceIn(moment).Select(rule => rule.Id)];
    }

    /// <summary>Hazards of rules that hold and of causes that are a serious possibility, by id.</summary>
    public static IEnumerable<string> Raised(Moment moment) => moment.Outcomes
        .Where(line => line.Kind == LineKind.Hazards)
        .SelectMany(line => line.Rule!.Hazards)
        .Concat(moment.Network.Causes
            .Where((_, position) => moment.ConfidenceAt(position) >= moment.EngineOptions.HazardConfidence)
            .SelectMany(cause => cause.Hazards))
        .Distinct();

    /// <summary>Rules that advise, by id.</summary>
    public static IEnumerable<Rule> AdviceIn(Moment moment) => moment.Outcomes
        .Where(line => line.Kind == LineKind.Advice)
        .Select(line => line.Rule!)
        .DistinctBy(rule => rule.Id)
        .OrderBy(rule => rule.Id, StringComparer.Ordinal);

    /// <summary>Fills a place with its step and the ways on.</summary>
    public void Plan(Place place)
    {
        var path = place.Path;
        var moment = new DiagnosisSession(_engine, _options, path.Record).Now();
        var raised = Raised(moment).Where(id => !path.Told.Contains(id)).ToList();
        var advice = AdviceIn(moment).Where(rule => !path.Told.Contains(rule.Id)).ToImmutableArray();
        var step = ReadOff(moment, path) ?? Next(moment, path);
        place.Step = step = step with { Hazards = InOrder([.. raised, .. step.Hazards]), Advice = advice, NotWhile = step.IsSameCheck ? [] : NotWhile(moment, step.Work) };
        var after = path with { Told = path.Told.Union(raised).Union(advice.Select(rule => rule.Id)) };
        place.Ways.AddRange(Ways(moment, place, step, after));
    }

    /// <summary>One more finding of the check just done, if it says anything more.</summary>
    private static PlacedStep? ReadOff(Moment moment, ChartPath path) =>
        path.Current is { } check && new FindingForecasts(moment, check).MostTelling(FindingForecasts.WorthAsking) is { } asked
            ? new PlacedStep { Kind = StepKind.Check, Work = check, Asked = moment.Pack.Nodes[asked], IsSameCheck = true, Skill = check.Skill }
            : null;

    /// <summary>What the planner would do.</summary>
    private PlacedStep Next(Moment moment, ChartPath path)
    {
        var done = new WorkDone(path.Steps.OfType<Check>().Select(check => check.Id).ToHashSet(StringComparer.Ordinal), OpenAccess.After(moment.Pack, _first, path.Steps));
        var builder = new SituationBuilder(moment, done);
        var situation = builder.Build();
        var step = new StepWriter(moment, builder, situation).Write(Planner.Plan(situation))[0];
        var placed = new PlacedStep
        {
            Kind = step.Kind,
            Skill = step.Skill,
            Minutes = step.Minutes,
            ExpectedCost = step.Cost + step.ExpectedCostAfter,
            Opens = step.Opens,
            Hazards = step.Hazards,
        };
        return step.Kind switch
        {
            StepKind.Check => WithCheck(moment, placed, moment.Pack.FindCheck(step.Id)!),
            StepKind.Repair => placed with { Work = moment.Pack.FindRepair(step.Id), Suspects = Suspects(moment, cause => cause.Repairs.Any(cure => cure.Repair == step.Id && cure.Probability > 0)) },
            _ => placed with { Suspects = Suspects(moment, _ => true) },
        };
    }

    private static ImmutableArray<Rule> NotWhile(Moment moment, WorkStep? work) =>
        [.. moment.Pack.Rules.Where(rule =>
            work is not null && rule.IsOn(moment.Index.Chassis) && rule.Defers.Contains(work.Id)
            && Dependence.MeasuredIn(rule.When, moment.Pack).Any()
            && rule.When.Evaluate(moment.Views.Strict) == Truth.Unknown)];

    private static PlacedStep WithCheck(Moment moment, PlacedStep placed, Check check) => placed with
    {
        Work = check,
        Asked = new FindingForecasts(moment, check).MostTelling(0) is { } node ? moment.Pack.Nodes[node] : null,
    };

    private static ImmutableArray<ChartSuspect> Suspects(Moment moment, Func<Cause, bool> isMeant) =>
        [.. moment.Network.Causes
            .Select((cause, position) => (cause, confidence: moment.ConfidenceAt(position)))
            .Where(pair => pair.confidence > 0 && isMeant(pair.cause))
            .OrderByDescending(pair => pair.confidence).ThenBy(pair => pair.cause.Id, StringComparer.Ordinal)
            .Take(MostSuspects)
            .Select(pair => new ChartSuspect(pair.cause.Id, pair.cause.Title, pair.confidence))];

    private static IEnumerable<Way> Ways(Moment moment, Place place, PlacedStep step, ChartPath after) => step.Work switch
    {
        Check check when step.Asked is { } asked => AfterCheck(moment, place, check, asked, after),
        Check check => [new Way(-1, 1, new Place(after.After(check), place.Reached, FindingForecasts.Weights(moment).SkipLast(1).Max()))],
        Repair repair => AfterRepair(moment, place, repair, after.After(repair)),
        _ => [],
    };

    private static IEnumerable<Way> AfterCheck(Moment moment, Place place, Check check, Graded asked, ChartPath after)
    {
        var forecasts = new FindingForecasts(moment, check);
        return forecasts.Grades(asked.Node).Select((probability, grade) =>
            new Way(grade, probability, new Place(after.After(check, asked, grade), place.Reached * probability, forecasts.LeadAfter(asked.Node, grade))));
    }

    private static IEnumerable<Way> AfterRepair(Moment moment, Place place, Repair repair, ChartPath inVain)
    {
        var weights = FindingForecasts.Weights(moment);
        double[] left = [.. moment.Network.Causes.Select((cause, position) =>
            weights[position] * (1 - cause.Repairs.Where(cure => cure.Repair == repair.Id).Sum(cure => cure.Probability)))];
        var stays = Math.Clamp(left.Sum() + weights[^1], 0, 1);
        yield return new Way(-1, 1 - stays, null);
        yield return new Way(-1, stays, new Place(inVain, place.Reached * stays, stays > 0 ? left.Max() / stays : 0));
    }

    private ImmutableArray<string> InOrder(IEnumerable<string> hazards) =>
        [.. hazards.Distinct().OrderByDescending(id => _engine.Pack.Find<Hazard>(id)?.SignalWord).ThenBy(id => id, StringComparer.Ordinal)];
}
