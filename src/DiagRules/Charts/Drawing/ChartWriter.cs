using System.Collections.Immutable;
using System.Globalization;
using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Quantities;
using DiagRules.Results;

namespace DiagRules.Charts.Drawing;

/// <summary>Writes the chart from the tree that was drawn.</summary>
internal sealed class ChartWriter(DiagnosisSession session)
{
    private readonly Pack _pack = session.Engine.Pack;
    private readonly Limits _limits = new(session.Engine.Pack, session.Engine.Chassis);

    public TroubleshootingChart Write(Place root)
    {
        var moment = session.Now();
        var folded = Folding.Fold(root);
        var steps = new StepSheets(_pack).Write(folded);
        var fromTheStart = InOrder(PlacePlanner.Raised(moment));
        return new TroubleshootingChart
        {
            Pack = _pack.Id,
            Version = _pack.Version,
            PackTitle = _pack.Title,
            Language = _pack.Language,
            Chassis = session.Engine.Chassis,
            Complaint = moment.Complaint?.Id,
            ComplaintTitle = moment.Complaint?.Title,
            Skill = session.Options.Skill,
            Known = [.. Known(moment)],
            ExpectedCost = root.Step!.ExpectedCost,
            HazardsFromTheStart = fromTheStart,
            Hazards = InOrder([.. fromTheStart.Select(hazard => hazard.Hazard), .. folded.SelectMany(box => box.Step.Hazards), .. steps.SelectMany(step => step.Hazards)]),
            Boxes = [.. folded.Select(Write)],
            Steps = steps,
            Beyond = Math.Clamp(folded.SelectMany(box => box.Branches).Where(branch => branch.Target.End == ChartEnd.Beyond).Sum(branch => branch.Mass), 0, 1),
        };
    }

    private ChartBox Write(FoldedBox box)
    {
        var step = box.Step;
        return new ChartBox
        {
            Number = box.Number,
            Kind = step.Kind,
            Step = step.Work?.Id ?? "specialist",
            Title = step.Work?.Title ?? "Give the job to a specialist",
            Question = QuestionOf(box),
            IsSameCheck = step.IsSameCheck,
            Skill = step.Skill,
            Minutes = step.Minutes,
            Opens = [.. step.Opens.Select(id => _pack.Find<Access>(id)!.Title)],
            Readings = step.Work is Check check ? [.. box.Asked.SelectMany(asked => _limits.ReadingsFor(check, asked)).Distinct()] : [],
            Hazards = InOrder(step.Hazards),
            Advice = [.. step.Advice.Select(rule => rule.Advise!)],
            NotWhile = [.. step.NotWhile.Select(rule => _limits.Write(rule.When) + (rule.Reason is { } reason ? $" ({reason})" : ""))],
            Suspects = box.MeanSuspects(),
            Reached = Math.Min(box.Reached, 1),
            Branches = [.. box.Branches.Select(branch => Write(box, branch))],
        };
    }

    private ChartBranch Write(FoldedBox box, FoldedBranch branch) => new(
        [.. Answers(box.Step, branch)],
        Math.Clamp(branch.Mass / box.Reached, 0, 1),
        branch.Target.Box?.Number,
        branch.Target.End)
    {
        IsOtherwise = branch.IsOtherwise,
    };

    /// <summary>What is asked, where the title of the step does not say it and the answers need not.</summary>
    private static string? QuestionOf(FoldedBox box) =>
        box.Asked.ToList() is [var asked] && (box.Step.IsSameCheck || (box.Step.Work is not Check { IsQuestion: true } && asked.Title != box.Step.Work!.Title)) ? asked.Title : null;

    private IEnumerable<ChartAnswer> Answers(PlacedStep step, FoldedBranch branch) => step switch
    {
        { Kind: StepKind.Repair } => [new ChartAnswer("", "", branch.Target.End == ChartEnd.Cured ? "cured" : "no-change", null)],
        { Work: Check check } => branch.Answers.Select(answer => new ChartAnswer(answer.Asked.Id, answer.Asked.Title, answer.Asked.Grades[answer.Grade], _limits.Of(check, answer.Asked, answer.Grade))
        {
            IsHealthy = answer.Grade == 0,
        }),
        _ => [],
    };

    private static IEnumerable<string> Known(Moment moment)
    {
        foreach (var reading in moment.Pack.Readings.Where(reading => moment.Observed.Readings[reading.Index] is not null))
        {
            var value = Quantity.FromSi(moment.Observed.Readings[reading.Index]!.Value.Si, reading.Unit).Rounded();
            yield return $"{reading.Title}: {value.ToString(CultureInfo.InvariantCulture)}";
        }

        foreach (var state in moment.Known.All.Where(state => !state.IsContradictory && state.Sides.Any(side => side.From is NodeObservation.Observation or NodeObservation.Working)))
        {
            var graded = moment.Pack.Nodes[state.Node];
            yield return $"{graded.Title}: {Words.Grades(graded, state.Grades)}";
        }

        foreach (var repair in moment.Observed.TriedInVain.Order(StringComparer.Ordinal))
        {
            yield return $"{moment.Pack.FindRepair(repair)!.Title}: done in vain";
        }
    }

    private ImmutableArray<HazardNotice> InOrder(IEnumerable<string> ids) =>
        [.. ids.Distinct()
            .Select(_pack.Find<Hazard>).OfType<Hazard>()
            .OrderByDescending(hazard => hazard.SignalWord).ThenBy(hazard => hazard.Id, StringComparer.Ordinal)
            .Select(hazard => new HazardNotice(hazard.Id, hazard.SignalWord, hazard.Symbol, hazard.Says, hazard.Avoid, hazard.Clears, []))];
}
