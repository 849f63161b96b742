using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;

namespace DiagRules.Replay;

/// <summary>
/// What playing the recorded cases of a pack shows about the cases themselves: those that contradict themselves (DR6006), observations
/// that moved nothing (DR6010) or cannot be under any listed cause (DR6011). Whether the pack is good enough, <see cref="PackReplay"/> says.
/// </summary>
public static class CaseChecks
{
    /// <summary>Plays all cases of a pack, in parallel; the result does not depend on how many threads there are.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="cancellation">Stops between two cases.</param>
    /// <returns>The problems in order of place; a warning that <c>accepts</c> of <c>pack.yaml</c> names carries its reason.</returns>
    /// <remarks>Each case is weighed once for each of its observations, and again without those that seem to move nothing.</remarks>
    /// <exception cref="EngineException">The pack cannot be compiled, or weighing goes beyond the engine's budget.</exception>
    public static ImmutableArray<Problem> Run(Pack pack, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pack);
        var engines = new ChassisEngines(pack);
        try
        {
            return [.. pack.Cases
                .AsParallel().AsOrdered().WithCancellation(cancellation)
                .SelectMany(recorded => new CaseCheck(engines.For(recorded.Chassis), recorded).Run())
                .Select(problem => problem with { Accepted = pack.Accepts.GetValueOrDefault(problem.Code) })
                .AsSequential()
                .OrderBy(problem => problem.Place)];
        }
        catch (AggregateException exception) when (exception.InnerExceptions.OfType<EngineException>().FirstOrDefault() is { } first)
        {
            throw new EngineException(first.Message, exception);
        }
    }
}
