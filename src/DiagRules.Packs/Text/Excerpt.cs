namespace DiagRules.Packs.Text;

/// <summary>Shortens a piece of a pack so that a message stays one readable line.</summary>
internal static class Excerpt
{
    private const int Longest = 60;

    public static string Of(string text)
    {
        var line = text.AsSpan().IndexOfAny('\r', '\n') is var end and >= 0 ? text[..end] + " ..." : text;
        return line.Length <= Longest ? line : string.Concat(line.AsSpan(0, Longest - 4), " ...");
    }
}
