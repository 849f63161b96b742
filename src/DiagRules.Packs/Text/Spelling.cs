namespace DiagRules.Packs.Text;

/// <summary>Finds the words somebody may have meant. Fast enough to ask over ten thousand ids for each misspelt one.</summary>
internal static class Spelling
{
    private const int Most = 3;

    // No id is longer than 64; what is much longer than that is not a misspelt word.
    private const int LongestWord = 96;

    /// <summary>
    /// Up to three candidates near a word, nearest first: those that differ in capitals only, or else by the number of letters left
    /// out, put in, exchanged or swapped (Damerau 1964, in the form of optimal string alignment), then the longer
    /// ones (letters are left out more often than put in), then in ordinal order.
    /// </summary>
    public static IReadOnlyList<string> Near(string word, IEnumerable<string> candidates)
    {
        if (word.Length is 0 or > LongestWord)
        {
            return [];
        }

        var cutoff = Cutoff(word.Length);
        var parts = SortedParts(word);
        var near = new List<(int Distance, string Candidate)>();
        foreach (var candidate in candidates)
        {
            var distance = string.Equals(word, candidate, StringComparison.OrdinalIgnoreCase) ? 0
                : parts.Length > 1 && candidate.Length == word.Length && SortedParts(candidate).AsSpan().SequenceEqual(parts) ? 1
                : Distance(word, candidate, cutoff);
            if (distance <= cutoff && distance < Math.Max(candidate.Length, word.Length))
            {
                near.Add((distance, candidate));
            }
        }

        var inCapitals = near.FindAll(found => found.Distance == 0);
        near = inCapitals.Count > 0 ? inCapitals : near;
        return [.. near.OrderBy(found => found.Distance).ThenByDescending(found => found.Candidate.Length).ThenBy(found => found.Candidate, StringComparer.Ordinal)
            .Select(found => found.Candidate).Distinct(StringComparer.Ordinal).Take(Most)];
    }

    /// <summary><c> Did you mean 'a', 'b' or 'c'?</c> with the space before it, or nothing when no candidate is near.</summary>
    public static string DidYouMean(string word, IEnumerable<string> candidates)
    {
        var near = Near(word, candidates);
        return near.Count == 0 ? "" : $" Did you mean {Wording.Or(near)}?";
    }

    /// <summary>Mistakes allowed: one in a short word, two in a usual one, three in a long one.</summary>
    private static int Cutoff(int length) => length switch
    {
        <= 3 => 1,
        <= 8 => 2,
        _ => 3,
    };

    /// <summary>The parts of <c>pump-fuse</c> in order of the alphabet, so that <c>fuse-pump</c> is seen to be near.</summary>
    private static string[] SortedParts(string id)
    {
        var parts = id.Split('-');
        Array.Sort(parts, StringComparer.Ordinal);
        return parts;
    }

    /// <summary>The distance, or something above the cut-off as soon as it must be above it.</summary>
    internal static int Distance(string left, string right, int cutoff)
    {
        if (Math.Abs(left.Length - right.Length) > cutoff)
        {
            return cutoff + 1;
        }

        var width = right.Length + 1;
        Span<int> cells = width <= LongestWord + 8 ? stackalloc int[3 * width] : new int[3 * width];
        var beforeLast = cells[..width];
        var last = cells.Slice(width, width);
        var row = cells.Slice(2 * width, width);
        for (var j = 0; j < width; j++)
        {
            row[j] = j;
        }

        for (var i = 1; i <= left.Length; i++)
        {
            var spare = beforeLast;
            beforeLast = last;
            last = row;
            row = spare;
            if (FillRow(left, right, i, row, last, beforeLast) > cutoff)
            {
                return cutoff + 1;
            }
        }

        return row[^1];
    }

    /// <summary>Fills one row of the table and gives its least number.</summary>
    private static int FillRow(string left, string right, int i, Span<int> row, ReadOnlySpan<int> last, ReadOnlySpan<int> beforeLast)
    {
        var least = row[0] = i;
        for (var j = 1; j <= right.Length; j++)
        {
            var exchanged = last[j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1);
            var cell = Math.Min(exchanged, Math.Min(last[j], row[j - 1]) + 1);
            if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
            {
                cell = Math.Min(cell, beforeLast[j - 2] + 1);
            }

            row[j] = cell;
            least = Math.Min(least, cell);
        }

        return least;
    }
}
