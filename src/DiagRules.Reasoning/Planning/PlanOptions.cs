namespace DiagRules.Reasoning.Planning;

/// <summary>How much work goes into a plan.</summary>
public sealed class PlanOptions
{
    /// <summary>
    /// How much may be worked out, one unit being one hypothesis or repair looked at once at one place of the tree of plans. Counted instead of
    /// time, so that the answer does not depend on the machine. Every next step is looked at whatever the budget (with 0 that is all), so it may be exceeded by a little.
    /// </summary>
    /// <remarks>What is remembered during a search grows with the work up to a fixed number of positions, some tens of megabytes at the most.</remarks>
    /// <value>Default 4 000 000: 15 to 20 ms of one core with 60 causes, 40 checks and 40 repairs. Not negative.</value>
    public long WorkBudget { get; set; } = 4_000_000;

    /// <summary>Whether to look for the best plan of all where the situation is small enough.</summary>
    /// <value>Default true.</value>
    public bool SearchExactly { get; set; } = true;
}
