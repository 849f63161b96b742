namespace DiagRules.Reasoning.Planning;

/// <summary>What to do next and what the job is expected to cost from here. Immutable; safe to share between threads.</summary>
public sealed record Plan
{
    /// <summary>
    /// Expected cost until the complaint is gone under the best plan found: checks, repairs, accesses and handing over included.
    /// Never above <see cref="Situation.SpecialistCost"/> nor above <see cref="RepairsOnlyCost"/>.
    /// </summary>
    public required double ExpectedCost { get; init; }

    /// <summary>
    /// Every step that can be done now, best first; of equally good ones those that do something come first, then by kind and index. The specialist is always among them.
    /// </summary>
    public required IReadOnlyList<NextStep> Steps { get; init; }

    /// <summary>Whether <see cref="ExpectedCost"/> is the least possible (apart from rounding) and not only the best that was found.</summary>
    public required bool IsExact { get; init; }

    /// <summary>How many steps ahead the search looked along the first of <see cref="Steps"/>; 1 when that is the specialist.</summary>
    public required int Depth { get; init; }

    /// <summary>Expected cost when nothing more is checked but for what repairs must come after.</summary>
    public required double RepairsOnlyCost { get; init; }

    /// <summary>The repairs in the order in which <see cref="RepairsOnlyCost"/> tries them; after the last the specialist gets what is left. May be empty.</summary>
    public required IReadOnlyList<PlannedRepair> Repairs { get; init; }

    /// <summary>The work that went into it, in the unit of <see cref="PlanOptions.WorkBudget"/>.</summary>
    public required long Work { get; init; }
}
