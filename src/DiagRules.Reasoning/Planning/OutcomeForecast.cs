namespace DiagRules.Reasoning.Planning;

/// <summary>What would be believed after one answer of a check.</summary>
/// <param name="Outcome">Index of the answer in <see cref="PlanCheck.Outcomes"/>.</param>
/// <param name="Probability">How likely this answer is now; above 0.</param>
/// <param name="Probabilities">The probability of each cause after it.</param>
/// <param name="Unlisted">The probability of something not listed after it. With <paramref name="Probabilities"/> it adds up to 1.</param>
public sealed record OutcomeForecast(int Outcome, double Probability, IReadOnlyList<double> Probabilities, double Unlisted);
