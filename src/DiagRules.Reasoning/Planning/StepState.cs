namespace DiagRules.Reasoning.Planning;

/// <summary>Whether a check or a repair can still be a next step.</summary>
public enum StepState
{
    /// <summary>Can be done. The default.</summary>
    Offered,

    /// <summary>A check that was done or whose answer is known; a repair that was tried in vain. Satisfies <see cref="PlanRepair.After"/>.</summary>
    Done,

    /// <summary>Cannot be done by this person with these tools. A repair that must come after a withheld check is never offered either.</summary>
    Withheld,
}
