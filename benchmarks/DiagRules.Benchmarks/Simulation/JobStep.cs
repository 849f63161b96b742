using DiagRules.Reasoning.Planning;

namespace DiagRules.Benchmarks.Simulation;

/// <summary>What a policy does next.</summary>
/// <param name="Kind">Check, repair or specialist.</param>
/// <param name="Index">Index of the check or repair; 0 for the specialist.</param>
internal readonly record struct JobStep(StepKind Kind, int Index)
{
    public static JobStep Specialist { get; } = new(StepKind.Specialist, 0);
}
