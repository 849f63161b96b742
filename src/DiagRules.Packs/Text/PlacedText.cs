using DiagRules.Model.Problems;

namespace DiagRules.Packs.Text;

/// <summary>
/// A scalar of a pack with the place of each of its characters: folded, escaped and block scalars do not stand in the file
/// as they read, so an offset into the value is looked up rather than added.
/// </summary>
/// <param name="Value">The text after YAML has read it.</param>
/// <param name="Place">Where the scalar begins (its first character, behind an opening quote).</param>
/// <param name="IsQuoted">Whether it stands in quotes or in a block.</param>
internal sealed record PlacedText(string Value, SourcePlace Place, bool IsQuoted = false)
{
    /// <summary>
    /// For each character of <see cref="Value"/> its line and column in the file; <see langword="null"/> where the text stands on one
    /// line just as it reads, so that adding the offset is right.
    /// </summary>
    public (int Line, int Column)[]? Map { get; init; }

    /// <summary>The place of a stretch of the text.</summary>
    public SourcePlace At(int offset, int length = 0)
    {
        if (Map is null || Map.Length == 0)
        {
            return Place with { Column = Place.Column + offset, Length = length };
        }

        var (line, column) = offset < Map.Length ? Map[offset] : (Map[^1].Line, Map[^1].Column + 1 + offset - Map.Length);
        return Place with { Line = line, Column = column, Length = length };
    }

    /// <summary>A stretch of the text, its places kept.</summary>
    public PlacedText Slice(int start, int length) =>
        new(Value.Substring(start, length), At(start, length), IsQuoted) { Map = Map?[start..(start + length)] };
}
