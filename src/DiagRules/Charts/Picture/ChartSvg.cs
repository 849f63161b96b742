using DiagRules.Results;

namespace DiagRules.Charts.Picture;

/// <summary>A chart as SVG, sheet by sheet.</summary>
internal sealed class ChartSvg
{
    private const double Left = Sheets.Margin, Right = Sheets.Width - Sheets.Margin, Room = Right - Left;
    private const double HeadHeight = 40;
    private const double TextSize = 10.5;
    private const double LineHeight = 14.5;

    private readonly TroubleshootingChart _chart;
    private readonly List<string> _opening = [];
    private readonly Sheets _sheets;

    public ChartSvg(TroubleshootingChart chart)
    {
        _chart = chart;
        _opening.AddRange(Lettering.Wrap(ChartWords.HowToRead, Room, TextSize));
        if (!chart.Known.IsEmpty)
        {
            _opening.AddRange(Lettering.Wrap("Known before: " + string.Join("; ", chart.Known), Room, TextSize));
        }

        _sheets = new Sheets(chart, sheet => HeadHeight + (sheet == 0 ? (_opening.Count * LineHeight) + HazardLines().Sum(line => line.Lines.Count * LineHeight) + 8 : 0));
    }

    /// <summary>All sheets, one below the other.</summary>
    public string Document()
    {
        var canvas = new SvgCanvas();
        double top = 0;
        for (var i = 0; i < _sheets.Pages.Count; i++)
        {
            canvas.Raw($"<g transform=\"translate(0 {Lettering.Number(top)})\">\n");
            canvas.Rectangle(0.5, 0.5, Sheets.Width - 1, _sheets.Pages[i].Height - 1, "#fff", "#bbb");
            Draw(canvas, i);
            canvas.Raw("</g>\n");
            top += _sheets.Pages[i].Height;
        }

        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + Frame(top, canvas.ToString());
    }

    /// <summary>Each sheet as a picture of its own.</summary>
    public IEnumerable<string> Pictures()
    {
        for (var i = 0; i < _sheets.Pages.Count; i++)
        {
            var canvas = new SvgCanvas();
            Draw(canvas, i);
            yield return Frame(_sheets.Pages[i].Height, canvas.ToString());
        }
    }

    private string Frame(double height, string content) =>
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{Lettering.Number(Sheets.Width)}\" height=\"{Lettering.Number(height)}\" "
        + $"viewBox=\"0 0 {Lettering.Number(Sheets.Width)} {Lettering.Number(height)}\" font-family=\"{Lettering.Family}\" role=\"img\">\n"
        + $"<title>{Lettering.Escape(ChartWords.Title(_chart))}</title>\n{content}</svg>\n";

    private void Draw(SvgCanvas canvas, int number)
    {
        var sheet = _sheets.Pages[number];
        DrawHead(canvas);
        if (number == 0)
        {
            DrawOpening(canvas);
        }

        foreach (var placed in sheet.Charts)
        {
            canvas.Text(placed.X, placed.Y + 11, Heading(placed), 11.5, isBold: true);
            placed.Tile.Draw(canvas, placed.X, placed.Y + PlacedChart.HeadingHeight);
        }

        var foot = sheet.Height - Sheets.Margin;
        canvas.Path($"M{Lettering.Number(Left)} {Lettering.Number(foot - 13)}H{Lettering.Number(Right)}", "none", "#999", 0.8);
        canvas.Text(Left, foot, ChartWords.Deference, 9.5, fill: "#444");
        canvas.Text(Right, foot, $"Sheet {number + 1} of {_sheets.Pages.Count}", 9.5, fill: "#444", anchor: "end");
    }

    private void DrawHead(SvgCanvas canvas)
    {
        // Title and pack share a line; each gets what its text needs, the pack at most half.
        var subject = Lettering.Wrap(ChartWords.Subject(_chart), Room / 2, TextSize).First();
        var title = Lettering.Wrap(ChartWords.Title(_chart), Room - Lettering.Width(subject, TextSize) - 20, 16, true).First();
        canvas.Text(Left, Sheets.Margin + 12, title, 16, isBold: true);
        canvas.Text(Right, Sheets.Margin + 4, subject, TextSize, fill: "#444", anchor: "end");
        canvas.Text(Right, Sheets.Margin + 18, Lettering.Wrap(_chart.PackTitle, Room / 2, TextSize).FirstOrDefault() ?? "", TextSize, fill: "#444", anchor: "end");
        canvas.Path($"M{Lettering.Number(Left)} {Lettering.Number(Sheets.Margin + 26)}H{Lettering.Number(Right)}", "none", "#222", 1.3);
    }

    private void DrawOpening(SvgCanvas canvas)
    {
        var y = Sheets.Margin + HeadHeight;
        foreach (var line in _opening)
        {
            canvas.Text(Left, y, line, TextSize);
            y += LineHeight;
        }

        foreach (var (hazard, lines, chip) in HazardLines())
        {
            var (ground, letters) = SignalColours.Of(hazard.SignalWord);
            canvas.Rectangle(Left, y - 10, chip, 13, ground);
            canvas.Text(Left + 4, y, ChartWords.Label(hazard), TextSize, isBold: true, fill: letters);
            foreach (var line in lines)
            {
                canvas.Text(Left + chip + 6, y, line, TextSize);
                y += LineHeight;
            }
        }
    }

    /// <summary>Hazards from the start in full.</summary>
    private IEnumerable<(HazardNotice Hazard, List<string> Lines, double Chip)> HazardLines() =>
        _chart.HazardsFromTheStart.Select(hazard =>
        {
            var chip = Lettering.Width(ChartWords.Label(hazard), TextSize, true) + 8;
            var says = string.Join(" ", new[] { hazard.Says, hazard.Avoid, hazard.Clears is { } clears ? "Over when: " + clears : null }.OfType<string>());
            return (hazard, Lettering.Wrap(says, Room - chip - 6, TextSize).ToList(), chip);
        });

    private static string Heading(PlacedChart placed) => placed.From.Count switch
    {
        0 => $"Chart {placed.Number}",
        _ => $"Chart {placed.Number}, from box {Words.Join([.. placed.From.Take(6).Select(box => box.ToString(System.Globalization.CultureInfo.InvariantCulture))])}{(placed.From.Count > 6 ? " and others" : "")}",
    };
}
