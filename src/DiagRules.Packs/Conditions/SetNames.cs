namespace DiagRules.Packs.Conditions;

/// <summary>The <c>$set</c> names within ids.</summary>
internal static class SetNames
{
    /// <summary>Every set that an id names, in order, without its dollar sign.</summary>
    public static IEnumerable<string> In(string id)
    {
        for (var at = id.IndexOf('$', StringComparison.Ordinal); at >= 0; at = id.IndexOf('$', at + 1))
        {
            yield return id.Substring(at + 1, NameLength(id, at + 1));
        }
    }

    /// <summary>The id with members put in where they are known; other sets stay as they are.</summary>
    /// <param name="text">An id, or a stretch of a condition.</param>
    /// <param name="member">The member a set stands for, or <see langword="null"/>.</param>
    public static string Replace(string text, Func<string, string?> member)
    {
        var at = text.IndexOf('$', StringComparison.Ordinal);
        if (at < 0)
        {
            return text;
        }

        var replaced = new System.Text.StringBuilder(text.Length);
        var copied = 0;
        while (at >= 0)
        {
            var length = NameLength(text, at + 1);
            if (member(text.Substring(at + 1, length)) is { } word)
            {
                replaced.Append(text, copied, at - copied).Append(word);
                copied = at + 1 + length;
            }

            at = text.IndexOf('$', at + 1);
        }

        return replaced.Append(text, copied, text.Length - copied).ToString();
    }

    /// <summary>Set names are single words of small letters, so <c>$side2</c> is the set <c>side</c> and a 2.</summary>
    private static int NameLength(string text, int from)
    {
        var end = from;
        while (end < text.Length && char.IsAsciiLetterLower(text[end]))
        {
            end++;
        }

        return end - from;
    }
}
