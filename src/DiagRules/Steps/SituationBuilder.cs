using System.Collections.Immutable;
using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Reasoning.Planning;
using DiagRules.Results;

namespace DiagRules.Steps;

/// <summary>Writes the present moment as a problem for the planner.</summary>
internal sealed class SituationBuilder
{
    private readonly Moment _moment;
    private readonly TellingNodes _telling;
    private readonly Offer _offer;
    private readonly List<WithheldStep> _withheld = [];
    private readonly Dictionary<string, int> _accessIndex;

    /// <param name="moment">Where the job stands.</param>
    /// <param name="done">Work that the record does not show in full, or <see langword="null"/> where the record says it all.</param>
    public SituationBuilder(Moment moment, WorkDone? done = null)
    {
        _moment = moment;
        var pack = moment.Pack;
        var chassis = moment.Index.Chassis;
        _telling = new TellingNodes(moment);
        _offer = new Offer(moment, _telling, done);
        Accesses = [.. pack.Access.Where(access => access.IsOn(chassis))];
        Checks = [.. pack.Checks.Where(check => check.IsOn(chassis))];
        Repairs = [.. pack.Repairs.Where(repair => repair.IsOn(chassis))];
        Open = done?.Open ?? OpenAccess.After(pack, moment.Record);
        _accessIndex = Accesses.Select((access, index) => (access.Id, index)).ToDictionary(pair => pair.Id, pair => pair.index);
        var nodes = Checks.Select(_telling.Of).ToArray();
        var forecasts = new CheckForecasts(moment, nodes);
        Forecasts = [.. nodes.Select(list => list.Count == 0 ? [] : forecasts.Of(list))];
    }

    public ImmutableArray<Access> Accesses { get; }

    public ImmutableArray<Check> Checks { get; }

    public ImmutableArray<Repair> Repairs { get; }

    /// <summary>What each check may answer; empty for a check that decides nothing.</summary>
    public ImmutableArray<ImmutableArray<ForecastOutcome>> Forecasts { get; }

    /// <summary>Access states that are open.</summary>
    public IReadOnlySet<string> Open { get; }

    /// <summary>Steps not offered, filled by <see cref="Build"/>.</summary>
    public ImmutableArray<WithheldStep> Withheld => [.. _withheld.OrderBy(step => step.Id, StringComparer.Ordinal)];

    public Offer Offer => _offer;

    public Situation Build()
    {
        var weights = new double[_moment.Network.Causes.Length];
        for (var position = 0; position < weights.Length; position++)
        {
            weights[position] = _moment.ConfidenceAt(position);
        }

        // With absolute probabilities the weighed causes are treated as alternatives, one at a time.
        var sum = weights.Sum() + _moment.Weighing.Unlisted;
        var checks = Checks.Select(PlanCheckOf).ToArray();
        return new Situation
        {
            Probabilities = sum > 0 ? [.. weights.Select(weight => weight / sum)] : weights,
            Unlisted = sum > 0 ? _moment.Weighing.Unlisted / sum : 1,
            SpecialistCost = _moment.Pack.MinutesWorth(_moment.Pack.SpecialistCost, _moment.EngineOptions.LabourPerHour),
            Accesses = [.. Accesses.Select(PlanAccessOf)],
            Checks = checks,
            Repairs = [.. Repairs.Select(PlanRepairOf)],
        };
    }

    private PlanAccess PlanAccessOf(Access access) => new()
    {
        Cost = _moment.CostOf(access),
        Needs = IndicesOf(access.Needs),
        Excludes = IndicesOf(access.Excludes),
        IsOpen = Open.Contains(access.Id),
    };

    private int[] IndicesOf(IEnumerable<string> accesses) =>
        [.. accesses.Where(_accessIndex.ContainsKey).Select(id => _accessIndex[id])];

    private PlanCheck PlanCheckOf(Check check, int index)
    {
        var forecasts = Forecasts[index];
        return new PlanCheck
        {
            Cost = _moment.CostOf(check),
            Needs = IndicesOf(check.Needs),
            State = StateOf(check, forecasts),
            Outcomes = forecasts.IsEmpty
                ? [new PlanOutcome { Likelihoods = [.. Enumerable.Repeat(1.0, _moment.Network.Causes.Length)], Unlisted = 1 }]
                : [.. forecasts.Select(forecast => forecast.Outcome with { MakesPointless = PointlessAfter(index, forecast) })],
        };
    }

    private StepState StateOf(Check check, ImmutableArray<ForecastOutcome> forecasts)
    {
        if (_offer.Pointless(check) is { } pointless)
        {
            if (!_telling.IsAnswered(check))
            {
                Withhold(check, pointless);
            }

            return StepState.Done;
        }

        if (_offer.Refusal(check) is { } refusal)
        {
            Withhold(check, refusal);
            return StepState.Withheld;
        }

        // What decides nothing may still be asked for by a repair that comes after it.
        return forecasts.IsEmpty && !Repairs.Any(repair => repair.After.Contains(check.Id)) ? StepState.Done : StepState.Offered;
    }

    /// <summary>Checks that an answer makes pointless: those it answers as well, and those whose <c>skip-if</c> it fulfils.</summary>
    private List<int> PointlessAfter(int done, ForecastOutcome answer)
    {
        var known = _moment.Views.Lenient.Known;
        var before = answer.Grades.Select(pair => known[pair.Node]).ToArray();
        foreach (var (node, grade) in answer.Grades)
        {
            known[node] = GradeSet.Of(grade);
        }

        var pointless = new List<int>();
        for (var other = 0; other < Checks.Length; other++)
        {
            var covers = !Forecasts[other].IsEmpty && Forecasts[other][0].Grades.All(pair => answer.Grades.Any(given => given.Node == pair.Node));
            if (other != done && (covers || Checks[other].SkipIf?.Evaluate(_moment.Views.Lenient) == Truth.True))
            {
                pointless.Add(other);
            }
        }

        for (var i = 0; i < before.Length; i++)
        {
            known[answer.Grades[i].Node] = before[i];
        }

        return pointless;
    }

    private PlanRepair PlanRepairOf(Repair repair)
    {
        var after = repair.After.Concat(LiftedBy(repair)).Distinct()
            .Select(id => Checks.IndexOf(Checks.FirstOrDefault(check => check.Id == id)!))
            .Where(index => index >= 0)
            .ToArray();
        return new PlanRepair
        {
            Cost = _moment.CostOf(repair),
            Needs = IndicesOf(repair.Needs),
            Cures = [.. _moment.Network.Causes.SelectMany((cause, position) =>
                cause.Repairs.Where(cure => cure.Repair == repair.Id && cure.Probability > 0).Select(cure => new Reasoning.Planning.Cure(position, cure.Probability)))],
            After = after,
            State = StateOf(repair),
        };
    }

    private StepState StateOf(Repair repair)
    {
        if (_moment.Observed.TriedInVain.Contains(repair.Id) || _moment.Observed.Cured.Contains(repair.Id))
        {
            return StepState.Done;
        }

        var deferrals = _offer.DeferralsOf(repair).ToList();
        var refusal = _offer.Refusal(repair);
        if (refusal is not null)
        {
            Withhold(repair, refusal);
        }

        // A deferral that some check may lift keeps the repair back until then; it does not strike it from the plan.
        return refusal is null || (deferrals.Count > 0 && deferrals.All(line => LiftedBy(line.When).Any())) ? StepState.Offered : StepState.Withheld;
    }

    private IEnumerable<string> LiftedBy(Repair repair) => _offer.DeferralsOf(repair).SelectMany(line => LiftedBy(line.When));

    /// <summary>Checks that give a finding the condition looks at and that is not known yet.</summary>
    private IEnumerable<string> LiftedBy(Condition when)
    {
        var open = Dependence.NodesIn(when).Where(node => _moment.Known[node] is null).ToHashSet();
        for (var index = 0; index < Checks.Length; index++)
        {
            if (Decides(index, open) && _offer.Pointless(Checks[index]) is null && _offer.Refusal(Checks[index]) is null)
            {
                yield return Checks[index].Id;
            }
        }
    }

    private bool Decides(int check, HashSet<int> nodes) =>
        !Forecasts[check].IsEmpty && Forecasts[check][0].Grades.Any(pair => nodes.Contains(pair.Node));

    private void Withhold(WorkStep step, string because) => _withheld.Add(new WithheldStep(step.Id, step.Title, because));
}
