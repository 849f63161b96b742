using DiagRules.Reasoning.Planning;

namespace DiagRules.Benchmarks.Simulation;

/// <summary>A way of choosing the next step.</summary>
/// <param name="Name">What the table calls it.</param>
/// <param name="Next">Chooses from where a job stands.</param>
internal sealed record JobPolicy(string Name, Func<Situation, JobStep> Next)
{
    /// <summary>The planner, asked anew after every answer, as a session does.</summary>
    public static JobPolicy Planner(string name, PlanOptions options) => new(name, situation =>
    {
        var best = Reasoning.Planning.Planner.Plan(situation, options).Steps[0];
        return new JobStep(best.Kind, best.Index);
    });
}
