using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

internal static class Plans
{
    internal static Plan Of(Situation situation, long? budget = null, bool exactly = true)
    {
        var options = new PlanOptions { SearchExactly = exactly };
        options.WorkBudget = budget ?? options.WorkBudget;
        return Planner.Plan(situation, options, TestContext.Current.CancellationToken);
    }
}
