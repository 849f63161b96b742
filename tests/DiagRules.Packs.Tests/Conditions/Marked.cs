using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tests.Conditions;

/// <summary>A sample text in which <c>[|...|]</c> marks the stretch that a problem must point at.</summary>
internal sealed record Marked(string Text, int Start, int Length)
{
    private const int Line = 7;
    private const int Column = 11;

    public static Marked Parse(string marked)
    {
        var start = marked.IndexOf("[|", StringComparison.Ordinal);
        var end = marked.IndexOf("|]", StringComparison.Ordinal);
        return start < 0
            ? new(marked, 0, 0)
            : new(marked[..start] + marked[(start + 2)..end] + marked[(end + 2)..], start, end - start - 2);
    }

    /// <summary>Somewhere in the middle of a file, so that a place that forgot its line or column shows.</summary>
    public PlacedText Placed => new(Text, new SourcePlace("test-lift", "motor.yaml", Line, Column));

    public SourcePlace Place => new("test-lift", "motor.yaml", Line, Column + Start, Length);
}
