using DiagRules.Model;

namespace DiagRules.Charts.Picture;

/// <summary>Colours of the signal words (ANSI Z535.1, ISO 3864-4: safety red, orange, yellow and blue), as near as sRGB comes; the word itself carries the meaning.</summary>
internal static class SignalColours
{
    /// <summary>Ground and letters.</summary>
    public static (string Ground, string Letters) Of(SignalWord word) => word switch
    {
        SignalWord.Danger => ("#c8102e", "#fff"),
        SignalWord.Warning => ("#ff8200", "#000"),
        SignalWord.Caution => ("#f9e300", "#000"),
        _ => ("#0f5fa8", "#fff"),
    };
}
