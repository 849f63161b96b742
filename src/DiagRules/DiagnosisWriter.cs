using System.Collections.Immutable;
using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Reasoning.Inference;
using DiagRules.Reasoning.Planning;
using DiagRules.Results;
using DiagRules.Rules;
using DiagRules.Steps;
using NextStep = DiagRules.Results.NextStep;

namespace DiagRules;

/// <summary>Writes a diagnosis from a moment.</summary>
internal sealed class DiagnosisWriter(Moment moment)
{
    private readonly List<string> _notes = [];

    public Diagnosis Write()
    {
        var hypotheses = Hypotheses();
        AddNotes();
        var (expectedCost, next, withheld) = Steps();
        return new Diagnosis
        {
            Pack = moment.Pack.Id,
            Version = moment.Pack.Version,
            Chassis = moment.Index.Chassis,
            Complaint = moment.Complaint?.Id,
            Hypotheses = hypotheses,
            Unlisted = moment.Network.HasShares ? moment.Weighing.Unlisted : null,
            ExpectedCost = expectedCost,
            AlsoPresent = AlsoPresent(hypotheses),
            Findings = Findings(),
            Readings = Readings(),
            Next = next,
            Withheld = withheld,
            Advice = [.. Lines(LineKind.Advice).Select(line => new Advice(line.Source, line.Rule!.Advise!, line.Rule.Reason))],
            Hazards = Hazards(next),
            Deferred = [.. Lines(LineKind.Defer).SelectMany(line => line.Rule!.Defers.Select(id => new Deferral(id, line.Source, line.Rule.Reason)))],
            Contradictions = Contradictions(),
            Notes = [.. _notes],
        };
    }

    /// <summary>Next steps. What cannot be forecast within the budget costs the steps, never the ranking.</summary>
    private (double ExpectedCost, ImmutableArray<NextStep> Next, ImmutableArray<WithheldStep> Withheld) Steps()
    {
        try
        {
            var builder = new SituationBuilder(moment);
            var situation = builder.Build();
            var plan = Planner.Plan(situation);
            if (!plan.IsExact)
            {
                _notes.Add($"The order of steps looks {plan.Depth} {(plan.Depth == 1 ? "step" : "steps")} ahead; the expected cost is what the best plan found costs.");
            }

            return (plan.ExpectedCost, new StepWriter(moment, builder, situation).Write(plan), builder.Withheld);
        }
        catch (InferenceBudgetException exception)
        {
            _notes.Add($"What checks would show could not be worked out, so no next step is priced. {exception.Message}");
            return (moment.Pack.MinutesWorth(moment.Pack.SpecialistCost, moment.EngineOptions.LabourPerHour), [], []);
        }
    }

    private IEnumerable<RuleLine> Lines(LineKind kind) =>
        moment.Outcomes.Where(line => line.Kind == kind).OrderBy(line => line.Source, StringComparer.Ordinal);

    private ImmutableArray<Hypothesis> Hypotheses() =>
        [.. moment.Network.Causes
            .Select((cause, position) => new Hypothesis(cause.Id, cause.Title, moment.ConfidenceAt(position), [.. cause.Repairs.Select(cure => cure.Repair)])
            {
                IsPrecondition = cause.Precondition is not null,
            })
            .OrderByDescending(hypothesis => hypothesis.Confidence)
            .ThenBy(hypothesis => hypothesis.Cause, StringComparer.Ordinal)];

    private ImmutableArray<AlsoPresent> AlsoPresent(ImmutableArray<Hypothesis> hypotheses)
    {
        if (!moment.Network.HasShares || hypotheses.IsEmpty || hypotheses[0].Confidence <= 0)
        {
            return [];
        }

        var leading = moment.Pack.Find<Cause>(hypotheses[0].Cause)!;
        var beside = moment.Weighing.AlsoPresent(moment.Network.NodeOf(leading.Node));
        return [.. moment.Network.Causes
            .Select((cause, position) => new AlsoPresent(cause.Id, cause.Title, beside[position]))
            .Where(also => also.Cause != leading.Id && also.Probability >= moment.EngineOptions.AlsoPresentFrom)
            .OrderByDescending(also => also.Probability)
            .ThenBy(also => also.Cause, StringComparer.Ordinal)];
    }

    private ImmutableArray<KnownFinding> Findings() =>
        [.. moment.Known.All.Where(state => !state.IsContradictory)
            .Select(state =>
            {
                var graded = moment.Pack.Nodes[state.Node];
                return new KnownFinding(graded.Id, graded.Title, Words.Grades(graded, state.Grades), [.. state.Sides.Select(side => side.From).Distinct()], state.Trust);
            })
            .OrderBy(finding => finding.Finding, StringComparer.Ordinal)];

    private ImmutableArray<Results.KnownReading> Readings() =>
        [.. moment.Pack.Readings.Where(reading => !double.IsNaN(moment.Views.Lenient.Readings[reading.Index])).Select(reading =>
        {
            var si = moment.Views.Lenient.Readings[reading.Index];
            var spread = SpreadOf(reading);
            return new Results.KnownReading(
                reading.Id,
                reading.Title,
                double.IsInfinity(si) ? si : reading.Unit.FromSi(si),
                reading.Unit.Symbol,
                spread > 0 ? reading.Unit.WidthFromSi(spread * Comparison.CoverageFactor) : null)
            {
                IsDerived = reading.From is not null,
            };
        })];

    private double SpreadOf(Reading reading)
    {
        var itself = new ReadingTerm(reading, TermType.Of(reading.Unit), reading.Place);
        var zero = new LiteralTerm(0, itself.Type, reading.Place);
        return new Comparison(itself, Comparator.Greater, zero, reading.Id, reading.Place).Spread(moment.Views.Lenient);
    }

    private ImmutableArray<Contradiction> Contradictions() =>
        [.. moment.Known.All.Where(state => state.IsContradictory).Select(state =>
        {
            var graded = moment.Pack.Nodes[state.Node];
            return new Contradiction(graded.Id, graded.Title, [.. state.Sides.Select(side => new ContradictionSide(Words.Grades(graded, side.Grades), side.From))]);
        })];

    /// <summary>Hazards of rules that hold, of causes that are a serious possibility, and of the steps proposed; gravest first.</summary>
    private ImmutableArray<HazardNotice> Hazards(ImmutableArray<NextStep> next)
    {
        var raised = Lines(LineKind.Hazards).SelectMany(line => line.Rule!.Hazards.Select(id => (id, from: line.Source)))
            .Concat(moment.Network.Causes
                .Where((_, position) => moment.ConfidenceAt(position) >= moment.EngineOptions.HazardConfidence)
                .SelectMany(cause => cause.Hazards.Select(id => (id, from: cause.Id))))
            .Concat(next.SelectMany(step => step.Hazards.Select(id => (id, from: step.Id))));
        return [.. raised.GroupBy(pair => pair.id, pair => pair.from)
            .Select(group => (hazard: moment.Pack.Find<Hazard>(group.Key)!, from: group.Distinct().ToImmutableArray()))
            .OrderByDescending(pair => pair.hazard.SignalWord).ThenBy(pair => pair.hazard.Id, StringComparer.Ordinal)
            .Select(pair => new HazardNotice(
                pair.hazard.Id, pair.hazard.SignalWord, pair.hazard.Symbol, pair.hazard.Says, pair.hazard.Avoid, pair.hazard.Clears, pair.from))];
    }

    private void AddNotes()
    {
        _notes.AddRange(moment.Observed.SetAside);
        _notes.AddRange(UnknownNotes.Of(moment.Index, moment.Views.Lenient));
        foreach (var node in moment.Weighing.LeftOut)
        {
            var graded = moment.Pack.Nodes.First(candidate => moment.Network.NodeOf(candidate.Node) == node);
            _notes.Add($"'{graded.Id}' as observed cannot be under any cause of this pack together with the rest; it is left out of the weighing.");
        }

        if (moment.Weighing.AreRepairsLeftOut)
        {
            _notes.Add("The repairs tried in vain leave no cause of this pack; they are left out of the weighing.");
        }
    }
}
