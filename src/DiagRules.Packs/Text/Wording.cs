namespace DiagRules.Packs.Text;

/// <summary>How messages put lists of words.</summary>
internal static class Wording
{
    /// <summary><c>'a'</c>, <c>'a' or 'b'</c>, <c>'a', 'b' or 'c'</c>.</summary>
    public static string Or(IEnumerable<string> words) => Join(words, "or");

    /// <summary><c>'a'</c>, <c>'a' and 'b'</c>, <c>'a', 'b' and 'c'</c>.</summary>
    public static string And(IEnumerable<string> words) => Join(words, "and");

    /// <summary><c>a</c> or <c>an</c> with the word behind it.</summary>
    public static string An(string noun) => (noun.Length > 0 && "aeiou".Contains(noun[0], StringComparison.Ordinal) ? "an " : "a ") + noun;

    private static string Join(IEnumerable<string> words, string last)
    {
        var quoted = words.Select(word => $"'{word}'").ToList();
        return quoted.Count switch
        {
            0 => "nothing",
            1 => quoted[0],
            _ => string.Join(", ", quoted.Take(quoted.Count - 1)) + $" {last} {quoted[^1]}",
        };
    }
}
