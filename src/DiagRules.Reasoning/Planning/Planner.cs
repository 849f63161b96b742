using DiagRules.Reasoning.Planning.Search;

namespace DiagRules.Reasoning.Planning;

/// <summary>Ranks what to do next by the expected cost of repair (Heckerman, Breese and Rommelse 1995). Stateless and safe to use from any thread.</summary>
/// <remarks>
/// Small situations are planned exactly, larger ones by bounded lookahead; <see cref="Plan.IsExact"/> tells which. See <c>docs/concepts/planning.md</c>.
/// The same situation and options give the same plan, to the last digit.
/// </remarks>
public static class Planner
{
    /// <summary>Plans a job from where it stands.</summary>
    /// <param name="situation">Where it stands.</param>
    /// <param name="options">How much work to put in; the defaults when null.</param>
    /// <param name="cancellationToken">Ends the search early.</param>
    /// <exception cref="ArgumentException">The situation has faults; the message lists all of them.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The work budget is negative.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Plan Plan(Situation situation, PlanOptions? options = null, CancellationToken cancellationToken = default)
    {
        options ??= new PlanOptions();
        ArgumentOutOfRangeException.ThrowIfNegative(options.WorkBudget, nameof(options));
        SituationFaults.ThrowIfAny(situation);
        cancellationToken.ThrowIfCancellationRequested();
        var meter = new WorkMeter(options.WorkBudget, cancellationToken);
        return new RootSearch(new CompiledSituation(situation), meter, options.SearchExactly).Run();
    }

    /// <summary>Draws what would be done whatever the answers: the tree behind a troubleshooting chart.</summary>
    /// <param name="situation">Where the job stands.</param>
    /// <param name="limits">How far to draw; the defaults when null.</param>
    /// <param name="options">How much work to put into each node; the defaults when null.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <remarks>Every node is planned anew, just as a session does after each answer, so the work grows with the nodes.</remarks>
    /// <exception cref="ArgumentException">The situation has faults; the message lists all of them.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is out of its range.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static PolicyNode PolicyTree(
        Situation situation, PolicyLimits? limits = null, PlanOptions? options = null, CancellationToken cancellationToken = default)
    {
        limits ??= new PolicyLimits();
        ArgumentOutOfRangeException.ThrowIfLessThan(limits.Depth, 1, nameof(limits));
        ArgumentOutOfRangeException.ThrowIfLessThan(limits.Nodes, 1, nameof(limits));
        if (!(limits.Probability is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(limits), limits.Probability, "The least probability of a node must lie within 0..1.");
        }

        SituationFaults.ThrowIfAny(situation);
        return new PolicyTreeBuilder(limits, options ?? new PlanOptions(), cancellationToken).Build(situation);
    }
}
