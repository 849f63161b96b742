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
        var near = new List<(int Distance, string Candidate)>();
        foreach (var candidate in candidates)
        {
            var distance = DistanceOf(word, candidate, cutoff);
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

    private static int DistanceOf(string word, string candidate, int cutoff)
    {
        if (Math.Abs(word.Length - candidate.Length) > cutoff)
        {
            return cutoff + 1;
        }

        var distance = Distance(word, candidate, cutoff);
        return word.Length != candidate.Length || distance == 0 ? distance
            : string.Equals(word, candidate, StringComparison.OrdinalIgnoreCase) ? 0
            : HaveSameParts(word, candidate) ? 1
            : distance;
    }

    /// <summary>Whether two ids differ in the order of their parts only: <c>fuse-pump</c> and <c>pump-fuse</c>.</summary>
    private static bool HaveSameParts(string word, string candidate)
    {
        var sum = 0;
        for (var i = 0; i < word.Length; i++)
        {
            sum += word[i] - candidate[i];
        }

        return sum == 0 && word.Contains('-', StringComparison.Ordinal) && SortedParts(word).AsSpan().SequenceEqual(SortedParts(candidate));
    }

    /// <summary>The parts of <c>pump-fuse</c> in order of the alphabet.</summary>
    private static string[] SortedParts(string id)
    {
        var parts = id.Split('-');
        Array.Sort(parts, StringComparer.Ordinal);
        return parts;
    }

    /// <summary>The distance, or something above the cut-off as soon as it must be above it.</summary>
    internal static int Distance(ReadOnlySpan<char> left, ReadOnlySpan<char> right, int cutoff)
    {
        // Most ids of a pack have their beginnings or ends in common; what is the same there changes nothing.
        var start = left.CommonPrefixLength(right);
        left = left[start..];
        right = right[start..];
        while (left.Length > 0 && right.Length > 0 && left[^1] == right[^1])
        {
            left = left[..^1];
            right = right[..^1];
        }

        return Math.Abs(left.Length - right.Length) > cutoff ? cutoff + 1
            : left.Length == 0 || right.Length == 0 ? Math.Max(left.Length, right.Length)
            : TableDistance(left, right, cutoff);
    }

    private static int TableDistance(ReadOnlySpan<char> left, ReadOnlySpan<char> right, int cutoff)
    {
        var width = right.Length + 1;
        Span<int> cells = width <= LongestWord + 8 ? stackalloc int[3 * width] : new int[3 * width];
        cells.Fill(cutoff + 1);
        var beforeLast = cells[..width];
        var last = cells.Slice(width, width);
        var row = cells.Slice(2 * width, width);
        for (var j = 0; j <= Math.Min(right.Length, cutoff); j++)
        {
            row[j] = j;
        }

        for (var i = 1; i <= left.Length; i++)
        {
            var spare = beforeLast;
            beforeLast = last;
            last = row;
            row = spare;
            if (FillRow(left, right, i, cutoff, row, last, beforeLast) > cutoff)
            {
                return cutoff + 1;
            }
        }

        return row[^1];
    }

    /// <summary>Fills one row of the table and gives its least number. Cells further from the diagonal than the cut-off cannot count.</summary>
    private static int FillRow(ReadOnlySpan<char> left, ReadOnlySpan<char> right, int i, int cutoff, Span<int> row, ReadOnlySpan<int> last, ReadOnlySpan<int> beforeLast)
    {
        var first = Math.Max(1, i - cutoff);
        var end = Math.Min(right.Length, i + cutoff);
        var least = row[first - 1] = first == 1 ? i : cutoff + 1;
        for (var j = first; j <= end; j++)
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

        if (end < right.Length)
        {
            row[end + 1] = cutoff + 1;
        }

        return least;
    }
}
