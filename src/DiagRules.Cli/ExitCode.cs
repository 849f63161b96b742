namespace DiagRules.Cli;

/// <summary>What the tool hands back to whoever started it.</summary>
internal static class ExitCode
{
    /// <summary>Done, and the answer is good.</summary>
    public const int Good = 0;

    /// <summary>Done, and the answer is "not good": problems were found.</summary>
    public const int NotGood = 1;

    /// <summary>Wrong use, or something that could not be read.</summary>
    public const int WrongUse = 2;

    /// <summary>Stopped from the keyboard: 128 and the number of SIGINT, as shells count it.</summary>
    public const int Interrupted = 130;
}
