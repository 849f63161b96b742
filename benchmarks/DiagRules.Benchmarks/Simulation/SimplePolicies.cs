using DiagRules.Reasoning.Planning;

namespace DiagRules.Benchmarks.Simulation;

/// <summary>Rules of thumb to compare the planner with.</summary>
internal static class SimplePolicies
{
    /// <summary>From this probability on the information seeker repairs instead of asking on.</summary>
    private const double SureEnough = 0.5;

    /// <summary>What tells less than this, in nats, is not asked.</summary>
    private const double WorthAsking = 0.01;

    public static IReadOnlyList<JobPolicy> All { get; } =
    [
        new("most probable first", MostProbable),
        new("best probability per cost, no checks of choice", BestRatio),
        new("cheapest first", Cheapest),
        new("most information per cost, then the best ratio", MostInformation),
    ];

    /// <summary>Repairs by descending probability; the specialist once something not listed is likelier than what any of them cures.</summary>
    private static JobStep MostProbable(Situation situation)
    {
        var work = new OpenWork(situation);
        var likeliest = work.Repairs.OrderByDescending(work.Cured).FirstOrDefault(-1);
        return likeliest >= 0 && work.Cured(likeliest) >= situation.Unlisted ? work.TowardsRepair(likeliest) : JobStep.Specialist;
    }

    /// <summary>Repairs by probability over cost, handed over when what is left is not worth it (Kadane and Simon 1977).</summary>
    private static JobStep BestRatio(Situation situation)
    {
        var work = new OpenWork(situation);
        var best = work.Repairs.OrderBy(r => work.CostWithChecks(r) / work.Cured(r)).FirstOrDefault(-1);
        return best >= 0 && work.CostWithChecks(best) < work.Cured(best) * situation.SpecialistCost ? work.TowardsRepair(best) : JobStep.Specialist;
    }

    /// <summary>Whatever costs least of the checks that tell something and the repairs that may cure; the specialist when nothing is left.</summary>
    private static JobStep Cheapest(Situation situation)
    {
        var work = new OpenWork(situation);
        var checks = work.Checks.Where(c => work.Information(c) > WorthAsking).Select(c => new JobStep(StepKind.Check, c));
        var priced = checks.Select(step => (Step: step, Cost: work.Cost(step)))
            .Concat(work.Repairs.Select(r => (Step: work.TowardsRepair(r), Cost: work.CostWithChecks(r))))
            .Append((Step: JobStep.Specialist, Cost: situation.SpecialistCost));
        return priced.MinBy(pair => pair.Cost).Step;
    }

    private static JobStep MostInformation(Situation situation)
    {
        var work = new OpenWork(situation);
        if (work.Repairs.Select(work.Cured).Append(situation.Unlisted).Max() >= SureEnough)
        {
            return BestRatio(situation);
        }

        var telling = work.Checks
            .Select(c => (Check: c, Information: work.Information(c)))
            .Where(pair => pair.Information > WorthAsking)
            .OrderByDescending(pair => pair.Information / Math.Max(work.Cost(new(StepKind.Check, pair.Check)), 1e-9))
            .Select(pair => pair.Check)
            .FirstOrDefault(-1);
        return telling >= 0 ? new(StepKind.Check, telling) : BestRatio(situation);
    }
}
