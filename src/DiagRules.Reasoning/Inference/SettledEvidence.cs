namespace DiagRules.Reasoning.Inference;

/// <summary>Evidence that can be, with what had to be left out to make it so.</summary>
internal sealed class SettledEvidence(Evidence observations, int[] leftOut, bool hasRepairs, bool areRepairsLeftOut)
{
    public Evidence Observations { get; } = observations;

    public int[] LeftOut { get; } = leftOut;

    /// <summary>Whether failed repairs weigh.</summary>
    public bool HasRepairs { get; } = hasRepairs;

    public bool AreRepairsLeftOut { get; } = areRepairsLeftOut;
}
