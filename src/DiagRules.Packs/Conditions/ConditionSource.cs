using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Conditions;

/// <summary>The text of one condition and where its problems go.</summary>
internal sealed class ConditionSource(PlacedText text, ProblemSink problems)
{
    private const int Window = 76;
    private const string Indent = "    ";

    // A pack with so many problems needs other help; looking through all ids for each of them would take a hostile one for ever.
    private const int ProposalsUpTo = 500;

    public string Value => text.Value;

    /// <summary>Whether near words are still looked for.</summary>
    public bool HasProposals => problems.Count < ProposalsUpTo;

    /// <summary>The place of a stretch of the text.</summary>
    public SourcePlace Place(int start, int end) => text.At(start, Math.Max(end - start, 0));

    /// <summary>A stretch of the text.</summary>
    public string Text(int start, int end) => text.Value[start..end];

    /// <summary>Reports a problem at a stretch of the text.</summary>
    public void Report(ProblemDescriptor descriptor, int start, int end, string message, string? member = null, bool withLine = false)
    {
        var place = Place(start, end);
        var shown = withLine && !string.IsNullOrWhiteSpace(text.Value) ? $"{message}\n{Line(start)}" : message;
        problems.Add(descriptor, member is null ? place : place with { Member = member }, shown);
    }

    /// <summary>The condition, or the part of it around a place, with a caret below that place.</summary>
    private string Line(int at)
    {
        var line = string.Create(text.Value.Length, text.Value, static (span, value) =>
        {
            for (var i = 0; i < span.Length; i++)
            {
                span[i] = char.IsControl(value[i]) ? ' ' : value[i];
            }
        });
        var start = Math.Max(0, Math.Min(at - (Window / 2), line.Length - Window));
        var end = Math.Min(line.Length, start + Window);
        var before = start > 0 ? "... " : "";
        var after = end < line.Length ? " ..." : "";
        return $"{Indent}{before}{line[start..end]}{after}\n{Indent}{new string(' ', before.Length + at - start)}^";
    }
}
