namespace DiagRules.Model.Problems;

/// <summary>A place in the text of a pack. Immutable; the default value means "no particular place".</summary>
/// <param name="Pack">Id of the pack, or an empty string where it is not known yet.</param>
/// <param name="File">Path of the file as the pack's folder was given, with forward slashes.</param>
/// <param name="Line">Line, from 1; 0 means the file as a whole.</param>
/// <param name="Column">Column in UTF-16 code units, from 1.</param>
/// <param name="Length">Length in UTF-16 code units on that line; 0 where it is not known.</param>
/// <param name="Member">Member of a <c>$set</c> for which a template entry was copied, else <see langword="null"/>.</param>
/// <param name="Overrides">Id of the base pack whose value stands overridden here, else <see langword="null"/>.</param>
public readonly record struct SourcePlace(
    string Pack, string File, int Line, int Column, int Length = 0, string? Member = null, string? Overrides = null)
    : IComparable<SourcePlace>
{
    /// <summary>Orders by file, line and column, the order in which problems are reported.</summary>
    public int CompareTo(SourcePlace other)
    {
        var byFile = string.CompareOrdinal(File, other.File);
        if (byFile != 0)
        {
            return byFile;
        }

        var byLine = Line.CompareTo(other.Line);
        return byLine != 0 ? byLine : Column.CompareTo(other.Column);
    }

    /// <summary><c>file(line,column)</c>, or the file alone when there is no line.</summary>
    public override string ToString() => Line > 0 ? $"{File}({Line},{Column})" : File ?? "";
}
