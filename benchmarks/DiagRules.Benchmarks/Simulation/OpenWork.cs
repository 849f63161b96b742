using DiagRules.Reasoning.Planning;
using DiagRules.Reasoning.Planning.Search;

namespace DiagRules.Benchmarks.Simulation;

/// <summary>What could be done in a situation, at what price: the raw material of the simple policies.</summary>
internal sealed class OpenWork
{
    private readonly Situation _situation;
    private readonly AccessOpening _opening;
    private readonly Bits _open;

    public OpenWork(Situation situation)
    {
        _situation = situation;
        _opening = new AccessOpening(situation.Accesses);
        _open = Bits.Of(situation.Accesses.Count, access => situation.Accesses[access].IsOpen);
    }

    /// <summary>Checks that can be done.</summary>
    public IEnumerable<int> Checks => Enumerable.Range(0, _situation.Checks.Count).Where(c => _situation.Checks[c].State == StepState.Offered);

    /// <summary>Repairs that can cure something possible, now or after checks that can be done.</summary>
    public IEnumerable<int> Repairs => Enumerable.Range(0, _situation.Repairs.Count).Where(r =>
        _situation.Repairs[r].State == StepState.Offered
        && Cured(r) > 0
        && _situation.Repairs[r].After.All(c => _situation.Checks[c].State != StepState.Withheld));

    /// <summary>The price of a step with its access opened.</summary>
    public double Cost(JobStep step) => step.Kind switch
    {
        StepKind.Check => _situation.Checks[step.Index].Cost + Opening(_situation.Checks[step.Index].Needs),
        StepKind.Repair => _situation.Repairs[step.Index].Cost + Opening(_situation.Repairs[step.Index].Needs),
        _ => _situation.SpecialistCost,
    };

    /// <summary>The price of a repair with the checks it waits for.</summary>
    public double CostWithChecks(int repair) =>
        Cost(new(StepKind.Repair, repair)) + Awaited(repair).Sum(check => Cost(new(StepKind.Check, check)));

    /// <summary>The repair, or the first check it waits for.</summary>
    public JobStep TowardsRepair(int repair) =>
        Awaited(repair).Select(check => new JobStep(StepKind.Check, check)).FirstOrDefault(new JobStep(StepKind.Repair, repair));

    /// <summary>The probability that a repair ends the complaint.</summary>
    public double Cured(int repair) => _situation.Repairs[repair].Cures.Sum(cure => _situation.Probabilities[cure.Cause] * cure.Probability);

    /// <summary>How much a check is expected to say about what is wrong: mutual information in nats (Shannon 1948).</summary>
    public double Information(int check)
    {
        var before = Entropy(_situation.Probabilities, _situation.Unlisted);
        return before - Progress.Forecast(_situation, check).Sum(answer => answer.Probability * Entropy(answer.Probabilities, answer.Unlisted));
    }

    private static double Entropy(IEnumerable<double> probabilities, double unlisted) =>
        -probabilities.Append(unlisted).Sum(p => p > 0 ? p * Math.Log(p) : 0);

    private IEnumerable<int> Awaited(int repair) => _situation.Repairs[repair].After.Where(c => _situation.Checks[c].State == StepState.Offered);

    private double Opening(IReadOnlyList<int> needs)
    {
        _opening.TryOpen(_open, needs, out var cost, out _);
        return cost;
    }
}
