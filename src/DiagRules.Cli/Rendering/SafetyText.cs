namespace DiagRules.Cli.Rendering;

/// <summary>Whose word counts for more than a pack's.</summary>
internal static class SafetyText
{
    private const string Deference =
        "The maker's instructions, local codes and licensed practice come first; a caution that is not shown here may still apply.";

    /// <summary>Writes the line.</summary>
    public static void Write(Page page) => page.Text(0, Deference, Ink.Faint);
}
