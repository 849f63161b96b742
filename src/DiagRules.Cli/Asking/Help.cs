using DiagRules.Cli.Rendering;

namespace DiagRules.Cli.Asking;

/// <summary>What may be typed at any question.</summary>
internal static class Help
{
    private static readonly (string Word, string Does)[] Lines =
    [
        ("1, 2, ...", "takes the answer with that number; its word or the beginning of it does too"),
        ("12.4", "takes the unit the question names; '12400 mV' brings its own"),
        ("slow or worse", "leaves several answers open"),
        ("slow, doubtful", "says that you are not sure; ', working' that the machine worked just then"),
        ("?", "cannot tell: the question is not put again"),
        ("back", "takes the last answer back"),
        ("why", "says why this is asked and why the leading cause leads; 'why ID' takes another cause"),
        ("standing", "lists all causes"),
        ("known", "lists what is known so far"),
        ("other", "lists other steps; 'other ID' takes one, by its number or id"),
        ("id=value", "adds any fact: power-unit=silent, fuse-load=0.2 V"),
        ("save FILE", "keeps the session in a file, from now on after every answer"),
        ("quit", "ends"),
    ];

    /// <summary>Writes the list.</summary>
    public static void Write(Page page)
    {
        foreach (var (word, does) in Lines)
        {
            page.Item(2, word, 16, does);
        }
    }
}
