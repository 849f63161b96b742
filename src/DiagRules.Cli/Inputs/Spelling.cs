namespace DiagRules.Cli.Inputs;

/// <summary>Finds the word somebody probably meant.</summary>
internal static class Spelling
{
    /// <summary><c> Did you mean 'x'?</c>, with a leading space, or nothing when no candidate is near.</summary>
    public static string Hint(string word, IEnumerable<string> candidates) =>
        Nearest(word, candidates) is { } near ? $" Did you mean '{near}'?" : "";

    /// <summary>The nearest candidate that at most a third of the letters tell from the word, or <see langword="null"/>.</summary>
    public static string? Nearest(string word, IEnumerable<string> candidates) => candidates
        .Select(candidate => (candidate, Distance: Distance(word.ToLowerInvariant(), candidate.ToLowerInvariant())))
        .Where(pair => pair.Distance <= Math.Max(1, Math.Max(word.Length, pair.candidate.Length) / 3))
        .OrderBy(pair => pair.Distance).ThenBy(pair => pair.candidate, StringComparer.Ordinal)
        .Select(pair => pair.candidate)
        .FirstOrDefault();

    // Letters put in, left out, exchanged, or swapped with their neighbour (optimal string alignment).
    private static int Distance(string left, string right)
    {
        var rows = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
        {
            for (var j = 0; j <= right.Length; j++)
            {
                rows[i, j] = i == 0 ? j : j == 0 ? i : Math.Min(
                    Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1,
                    rows[i - 1, j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                {
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
                }
            }
        }

        return rows[left.Length, right.Length];
    }
}
