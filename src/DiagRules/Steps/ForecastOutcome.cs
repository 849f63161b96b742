using System.Collections.Immutable;
using DiagRules.Reasoning.Planning;

namespace DiagRules.Steps;

/// <summary>One answer a check may give: grades of the findings it decides, and how likely that is under each cause.</summary>
/// <param name="Grades">Pack node and grade.</param>
/// <param name="Outcome">Likelihoods for the planner.</param>
internal sealed record ForecastOutcome(ImmutableArray<(int Node, int Grade)> Grades, PlanOutcome Outcome);
