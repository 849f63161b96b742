namespace DiagRules.Model.Problems;

/// <summary>How much a problem weighs.</summary>
public enum Severity
{
    /// <summary>Advice; nothing is refused.</summary>
    Note,

    /// <summary>The pack loads, but CI may refuse it.</summary>
    Warning,

    /// <summary>The pack, or the recorded case, is refused.</summary>
    Error,
}
