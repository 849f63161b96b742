namespace DiagRules.Reasoning.Planning;

/// <summary>What a next step is. The order of the values breaks ties in a ranking.</summary>
public enum StepKind
{
    /// <summary>Find something out.</summary>
    Check,

    /// <summary>Put something right, then see whether the complaint is gone.</summary>
    Repair,

    /// <summary>Give the whole job to a specialist; this always ends it.</summary>
    Specialist,
}
