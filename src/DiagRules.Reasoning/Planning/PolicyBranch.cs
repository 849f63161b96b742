namespace DiagRules.Reasoning.Planning;

/// <summary>What comes of a step of a policy.</summary>
/// <param name="Outcome">Index of the answer of a check; null after a repair: it was in vain.</param>
/// <param name="Probability">Its probability once the step is done.</param>
/// <param name="Next">What to do then.</param>
public sealed record PolicyBranch(int? Outcome, double Probability, PolicyNode Next);
