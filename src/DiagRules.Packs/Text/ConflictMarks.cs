using DiagRules.Model.Problems;

namespace DiagRules.Packs.Text;

/// <summary>Finds the marks a merge leaves behind where two branches changed the same lines.</summary>
internal static class ConflictMarks
{
    private const string Ours = "<<<<<<<", Middle = "=======", Theirs = ">>>>>>>";

    /// <summary>Reports each conflict once.</summary>
    /// <returns>Whether there was one: such a file cannot be read any further.</returns>
    public static bool Report(SourceText source, ProblemSink problems)
    {
        if (!source.Text.Contains(Ours, StringComparison.Ordinal) && !source.Text.Contains(Theirs, StringComparison.Ordinal))
        {
            return false;
        }

        var found = false;
        for (var line = 1; line <= source.LineCount; line++)
        {
            if (!IsMark(source.Line(line), Ours))
            {
                found |= ReportStray(source, line, problems);
                continue;
            }

            found = true;
            var middle = Next(source, line + 1, Middle);
            var last = Next(source, middle + 1, Theirs);
            problems.Add(ProblemCatalogue.MergeConflictMark, source.Place(line, 1, source.Line(line).Length), Message(source, line, middle, last));
            line = Math.Max(line, last);
        }

        return found;
    }

    private static bool ReportStray(SourceText source, int line, ProblemSink problems)
    {
        if (!IsMark(source.Line(line), Theirs))
        {
            return false;
        }

        var mark = source.Line(line).ToString();
        problems.Add(
            ProblemCatalogue.MergeConflictMark,
            source.Place(line, 1, mark.Length),
            $"'{Excerpt.Of(mark)}' is left over from a merge; delete the mark.");
        return true;
    }

    private static string Message(SourceText source, int first, int middle, int last)
    {
        var ours = middle > first + 1 ? source.Line(first + 1).ToString().Trim() : "";
        var theirs = last > middle + 1 ? source.Line(middle + 1).ToString().Trim() : "";
        return $"'{Excerpt.Of(source.Line(first).ToString())}' begins an unresolved merge: one side starts with '{Excerpt.Of(ours)}', the other with '{Excerpt.Of(theirs)}'; keep one of them and delete the marks.";
    }

    /// <summary>The line of the next mark of a kind, or the last line.</summary>
    private static int Next(SourceText source, int from, string mark)
    {
        var line = Math.Min(from, source.LineCount);
        while (line < source.LineCount && !IsMark(source.Line(line), mark))
        {
            line++;
        }

        return line;
    }

    private static bool IsMark(ReadOnlySpan<char> line, string mark) =>
        line.StartsWith(mark) && (line.Length == mark.Length || line[mark.Length] == ' ');
}
