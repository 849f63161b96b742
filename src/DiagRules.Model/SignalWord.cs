namespace DiagRules.Model;

/// <summary>Signal words, gravest last.</summary>
public enum SignalWord
{
    /// <summary>Damage to property (ANSI Z535.6 only).</summary>
    Notice,

    /// <summary>Minor or moderate injury possible.</summary>
    Caution,

    /// <summary>Death or serious injury possible.</summary>
    Warning,

    /// <summary>Death or serious injury certain unless avoided.</summary>
    Danger,
}
