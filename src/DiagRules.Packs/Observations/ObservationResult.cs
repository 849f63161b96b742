using DiagRules.Model.Cases;
using DiagRules.Model.Problems;

namespace DiagRules.Packs.Observations;

/// <summary>What came of reading an observation. Immutable.</summary>
/// <remarks>
/// <list type="bullet">
/// <item>An observation and no problem: it can be used.</item>
/// <item>An observation and a problem: it is readable but not plausible, so it is taken for a slip of the pen. Show the problem, keep
/// the observation on record, and conclude nothing from it; a session does so by itself.</item>
/// <item>A problem and no observation: there is nothing to keep.</item>
/// </list>
/// </remarks>
public sealed record ObservationResult
{
    internal ObservationResult(Observation? observation, Problem? problem)
    {
        Observation = observation;
        Problem = problem;
    }

    /// <summary>The observation, or <see langword="null"/> when the text could not be read.</summary>
    public Observation? Observation { get; }

    /// <summary>What is wrong, or <see langword="null"/>.</summary>
    public Problem? Problem { get; }

    /// <summary>Whether there is an observation to conclude from.</summary>
    public bool IsUsable => Observation is not null && Problem is null;
}
