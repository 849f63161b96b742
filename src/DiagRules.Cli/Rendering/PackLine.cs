using DiagRules.Model;

namespace DiagRules.Cli.Rendering;

/// <summary>Which pack speaks, in which version and for which chassis.</summary>
internal static class PackLine
{
    /// <summary>Writes title, id, version and chassis, and a rule below.</summary>
    public static void Write(Page page, Pack pack, string? chassis)
    {
        page.Text(0, pack.Title, Ink.Strong);
        var among = pack.Chassis.Length > 1 ? $" (of {string.Join(", ", pack.Chassis)})" : "";
        page.Text(0, $"{pack.Id} {pack.Version}" + (chassis is null ? "" : $", chassis {chassis}{among}"), Ink.Faint);
        page.Rule();
    }
}
