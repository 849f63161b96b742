namespace DiagRules.Results;

/// <summary>What kind of step is proposed.</summary>
public enum StepKind
{
    /// <summary>Find something out.</summary>
    Check,

    /// <summary>Put something right, or restore a precondition.</summary>
    Repair,

    /// <summary>Give the whole job to a specialist.</summary>
    Specialist,
}
