using DiagRules.Results;

namespace DiagRules.Charts.Picture;

/// <summary>A chart as plain text.</summary>
internal sealed class ChartText(TroubleshootingChart chart, int width)
{
    private const int Indent = 5;
    private const int LabelWidth = 11;

    private readonly PlainPage _page = new(width);
    private readonly Dictionary<string, ChartStep> _steps = chart.Steps.ToDictionary(step => step.Id, StringComparer.Ordinal);

    public string Write()
    {
        WriteHead();
        foreach (var box in chart.Boxes)
        {
            _page.Blank();
            Write(box);
        }

        WriteHazards();
        _page.Blank();
        _page.Text(0, ChartWords.Deference);
        return _page.ToString();
    }

    private void WriteHead()
    {
        _page.Text(0, ChartWords.Title(chart));
        _page.Text(0, chart.PackTitle);
        _page.Text(0, ChartWords.Subject(chart));
        _page.Rule();
        _page.Text(0, ChartWords.HowToRead);
        if (!chart.HazardsFromTheStart.IsEmpty)
        {
            _page.Text(0, "From the start: " + Names(chart.HazardsFromTheStart));
        }

        if (!chart.Known.IsEmpty)
        {
            _page.Text(0, "Known before: " + string.Join("; ", chart.Known));
        }
    }

    private void Write(ChartBox box)
    {
        _page.Item(0, $"{box.Number}.".PadLeft(Indent - 1), Indent, ChartWords.Heading(box));
        _page.Text(Indent, ChartWords.Price(box));
        Labelled("First", string.Join("; ", box.Opens));
        Labelled("Mind", Names(box.Hazards));
        Labelled("Not while", string.Join("; ", box.NotWhile));
        foreach (var advice in box.Advice)
        {
            Labelled("Note", advice);
        }

        Labelled("Puts right", box.Kind == StepKind.Repair ? ChartWords.Suspects(box) : "");
        if (box.Kind == StepKind.Repair && _steps.GetValueOrDefault(box.Step) is { } step)
        {
            Labelled("Parts", string.Join("; ", step.Parts));
            Labelled("Fasteners", string.Join("; ", step.Fasteners));
            Labelled("Prove by", string.Join("; ", step.Proofs.Select(ChartWords.Proof)));
        }

        Labelled("Judge", box.IsSameCheck ? "" : box.Question ?? "");
        foreach (var reading in box.Readings)
        {
            Labelled("Take", $"{reading.Reading}: {reading.Title}");
        }

        Labelled("Judge", ChartWords.AsksSeveral(box) ? "The first of these that fits" : "");
        foreach (var branch in box.Branches)
        {
            Write(box, branch);
        }
    }

    private void Write(ChartBox box, ChartBranch branch)
    {
        var limits = ChartWords.Limits(branch);
        var to = branch.Next is { } next ? $"go to {next}" : Uncapitalised(ChartWords.End(branch.End!.Value));
        _page.Item(
            Indent,
            Words.Percent(branch.Probability).PadLeft(9),
            LabelWidth,
            ChartWords.Answers(box, branch) + (limits.Length > 0 ? $" ({limits})" : "") + " -> " + to);
    }

    private void WriteHazards()
    {
        if (!chart.Hazards.IsEmpty)
        {
            _page.Blank();
            _page.Text(0, "What can hurt");
        }

        foreach (var hazard in chart.Hazards)
        {
            _page.Item(2, ChartWords.Label(hazard), 13, $"{ChartWords.Plain(hazard.Hazard)}: {hazard.Says}");
            _page.Item(15, "Avoid", 11, hazard.Avoid ?? "");
            _page.Item(15, "Over when", 11, hazard.Clears ?? "");
        }
    }

    private static string Uncapitalised(string text) => char.ToLowerInvariant(text[0]) + text[1..];

    private static string Names(IEnumerable<HazardNotice> hazards) =>
        string.Join("; ", hazards.Select(hazard => $"{ChartWords.Label(hazard)} {ChartWords.Plain(hazard.Hazard)}"));

    private void Labelled(string label, string text) => _page.Item(Indent, label, LabelWidth, text);
}
