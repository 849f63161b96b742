using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Cli.Rendering;

/// <summary>
/// Cautions: the signal word in capitals (ANSI Z535.6, ISO 3864-2) with the number of the sign (ISO 7010), what it does, how to keep
/// out of its way and when it is over.
/// </summary>
internal static class HazardText
{
    /// <summary>Columns kept for signal word and number of the sign.</summary>
    public const int LabelWidth = 13;

    /// <summary>The label: <c>DANGER W019</c>.</summary>
    public static string Label(HazardNotice hazard) =>
        hazard.SignalWord.ToString().ToUpperInvariant() + (hazard.Symbol is null ? "" : " " + hazard.Symbol);

    /// <summary>The whole caution.</summary>
    public static void Write(Page page, int indent, HazardNotice hazard)
    {
        page.Item(indent, Label(hazard), LabelWidth, hazard.Says, InkOf(hazard.SignalWord), Ink.Strong);
        page.Item(indent + 2, "Avoid", LabelWidth - 2, hazard.Avoid ?? "");
        page.Item(indent + 2, "Over when", LabelWidth - 2, hazard.Clears ?? "");
    }

    /// <summary>Cautions by name only, for those that stand in full further up.</summary>
    public static string Names(IEnumerable<HazardNotice> hazards) =>
        string.Join("; ", hazards.Select(hazard => Page.Together(Label(hazard)) + " " + Words.Plain(hazard.Hazard)));

    private static Ink InkOf(SignalWord word) => word switch
    {
        SignalWord.Danger => Ink.Danger,
        SignalWord.Warning => Ink.Warning,
        SignalWord.Caution => Ink.Caution,
        _ => Ink.Notice,
    };
}
