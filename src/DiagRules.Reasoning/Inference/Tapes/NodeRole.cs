namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>What a tape makes of a node.</summary>
internal enum NodeRole : byte
{
    /// <summary>Nothing was seen of it; left out where no observation and no question hangs on it.</summary>
    Free,

    /// <summary>Known for certain; the grade may change from question to question.</summary>
    Fixed,

    /// <summary>Known to be at most some grade: one factor per parent, and no table at all.</summary>
    Split,

    /// <summary>A leaf with likelihoods that form a few runs of equal ones.</summary>
    Soft,

    /// <summary>The same, and no later run is likelier: a sum of "at most g" with weights of 0 or more, each of which splits.</summary>
    Falling,

    /// <summary>A variable with all its grades and a likelihood for each.</summary>
    Open,
}
