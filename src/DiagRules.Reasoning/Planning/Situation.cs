namespace DiagRules.Reasoning.Planning;

/// <summary>Where a job stands: what may be wrong, what can be found out, what can be put right, and what each of these costs.</summary>
/// <remarks>
/// Exactly one cause is the primary one, or it is something not listed. Everything is named by its index. All costs share one unit.
/// Immutable as long as the lists handed in are left alone, and then safe to share between threads. It is checked as a whole when it is used:
/// <see cref="Planner"/> and the methods here throw <see cref="ArgumentException"/> with every fault found.
/// </remarks>
public sealed record Situation
{
    /// <summary>The probability that cause <c>i</c> is the primary one. With <see cref="Unlisted"/> they add up to 1 (to within 1e-6; they are normalised).</summary>
    public required IReadOnlyList<double> Probabilities { get; init; }

    /// <summary>The probability that the cause is something not listed. No repair cures it; only the specialist ends such a job. 0 by default.</summary>
    public double Unlisted { get; init; }

    /// <summary>What giving the job away costs. Finite, 0 or more. It needs no access and is always possible.</summary>
    public required double SpecialistCost { get; init; }

    /// <summary>The accesses. None by default.</summary>
    public IReadOnlyList<PlanAccess> Accesses { get; init; } = [];

    /// <summary>The checks. None by default.</summary>
    public IReadOnlyList<PlanCheck> Checks { get; init; } = [];

    /// <summary>The repairs. None by default.</summary>
    public IReadOnlyList<PlanRepair> Repairs { get; init; } = [];

    /// <summary>What would be believed after each possible answer of a check (Bayes' rule); shows which causes it tells apart.</summary>
    /// <param name="check">Index of the check.</param>
    /// <returns>The answers with a probability above 0, in their own order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such check.</exception>
    /// <exception cref="ArgumentException">The situation has faults.</exception>
    public IReadOnlyList<OutcomeForecast> Forecast(int check)
    {
        SituationFaults.ThrowIfAny(this);
        return Progress.Forecast(this, check);
    }

    /// <summary>The situation after a check has been done: probabilities, open accesses and states follow.</summary>
    /// <param name="check">Index of a check.</param>
    /// <param name="outcome">Index of the answer it gave.</param>
    /// <returns>A new situation with the same indices.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such check or answer.</exception>
    /// <exception cref="ArgumentException">The situation has faults, the check is not offered, or the answer has probability 0.</exception>
    public Situation AfterCheck(int check, int outcome)
    {
        SituationFaults.ThrowIfAny(this);
        return Progress.AfterCheck(this, check, outcome);
    }

    /// <summary>The situation after a repair has been tried in vain.</summary>
    /// <param name="repair">Index of a repair.</param>
    /// <returns>A new situation with the same indices.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such repair.</exception>
    /// <exception cref="ArgumentException">The situation has faults, the repair is not offered, or it cannot fail.</exception>
    public Situation AfterRepair(int repair)
    {
        SituationFaults.ThrowIfAny(this);
        return Progress.AfterRepair(this, repair);
    }
}
