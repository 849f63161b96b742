namespace DiagRules.Reasoning.Inference;

/// <summary>What is known on one job: observed findings, causes looked at, repairs tried in vain.</summary>
/// <remarks>
/// The newest observation of a node replaces the older one; the order never matters. Mutable, cheap to clear and to copy; not thread-safe. It serves every
/// <see cref="CauseModel"/> over the same network, so also one under other shares.
/// </remarks>
public sealed class CauseEvidence
{
    private readonly CauseModel _model;
    private readonly double[] _survival;

    /// <summary>Evidence for models over the network of <paramref name="model"/>, with nothing known yet.</summary>
    public CauseEvidence(CauseModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        _model = model;
        Observations = new Evidence(model.Network);
        _survival = new double[model.Network.Count];
        Array.Fill(_survival, 1);
    }

    private CauseEvidence(CauseModel model, Evidence observations, double[] survival)
    {
        _model = model;
        Observations = observations;
        _survival = survival;
    }

    /// <summary>Observed nodes, ascending: findings, and causes ruled out, seen or weighed.</summary>
    public IEnumerable<int> Observed => Observations.Observed;

    /// <summary>Whether any repair was tried in vain.</summary>
    public bool HasFailedRepairs => _survival.AsSpan().ContainsAnyExcept(1.0);

    internal Evidence Observations { get; }

    /// <summary>By node: what the repairs tried in vain leave of a cause's weight.</summary>
    internal ReadOnlySpan<double> Survival => _survival;

    /// <summary>Observes the grade of a finding (or of a cause or effect).</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such node or grade.</exception>
    public void Observe(int node, int grade) => Observations.Observe(node, grade);

    /// <summary>Observes a node softly, with a likelihood per grade; see <see cref="Evidence.Observe(int, ReadOnlySpan{double})"/>.</summary>
    public void Observe(int node, ReadOnlySpan<double> likelihoods) => Observations.Observe(node, likelihoods);

    /// <summary>Rules a cause out: it is known to be absent.</summary>
    /// <exception cref="ArgumentException">The node is no cause of the model.</exception>
    public void RuleOut(int cause) => Observations.Observe(RequireCause(cause), 0);

    /// <summary>Observes that a cause is present, by itself; another one may still be behind the complaint.</summary>
    /// <exception cref="ArgumentException">The node is no cause of the model.</exception>
    public void ObservePresent(int cause) => Observations.Observe(RequireCause(cause), 1);

    /// <summary>Takes back what was observed of a node.</summary>
    public void Withdraw(int node) => Observations.Withdraw(node);

    /// <summary>Records that a repair was tried and the complaint stayed.</summary>
    /// <param name="cause">A cause the repair cures. Call once for each.</param>
    /// <param name="cures">How surely the repair cures it, 0..1; 1 puts it out of the running, though it may still explain what was seen before.</param>
    /// <exception cref="ArgumentException">The node is no cause of the model, or <paramref name="cures"/> is not a probability.</exception>
    public void RepairFailed(int cause, double cures = 1)
    {
        Distribution.RequireProbability(cures, "how surely the repair cures its cause", nameof(cures));
        _survival[RequireCause(cause)] *= 1 - cures;
    }

    /// <summary>Forgets all repairs tried in vain.</summary>
    public void WithdrawRepairs() => Array.Fill(_survival, 1);

    /// <summary>Forgets everything.</summary>
    public void Clear()
    {
        Observations.Clear();
        WithdrawRepairs();
    }

    /// <summary>An independent copy.</summary>
    public CauseEvidence Copy() => new(_model, Observations.Copy(), [.. _survival]);

    /// <summary>Makes this the same as <paramref name="other"/>, which must be about the same network.</summary>
    /// <exception cref="ArgumentException"><paramref name="other"/> is about another network.</exception>
    public void CopyFrom(CauseEvidence other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Observations.CopyFrom(other.Observations);
        other._survival.CopyTo(_survival, 0);
    }

    private int RequireCause(int cause)
    {
        _model.PositionOf(cause);
        return cause;
    }
}
