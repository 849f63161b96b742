namespace DiagRules.Cli.Rendering;

/// <summary>How a label stands out on a terminal. Says nothing that the words do not say as well.</summary>
internal enum Ink
{
    /// <summary>As it comes.</summary>
    Plain,

    /// <summary>Bold: headings and the leading cause.</summary>
    Strong,

    /// <summary>Dim: what may be skipped.</summary>
    Faint,

    /// <summary>White on red, as on the sign (ANSI Z535.4).</summary>
    Danger,

    /// <summary>Black on orange; terminals without orange show yellow.</summary>
    Warning,

    /// <summary>Black on yellow.</summary>
    Caution,

    /// <summary>White on blue.</summary>
    Notice,
}
