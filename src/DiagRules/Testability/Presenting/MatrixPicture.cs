using System.Globalization;
using DiagRules.Charts.Picture;

namespace DiagRules.Testability.Presenting;

/// <summary>The matrix as SVG: a dark square where a check detects a cause, a small pale one where it may show something.</summary>
internal sealed class MatrixPicture(TestabilityStudy study)
{
    private const double Cell = 15;
    private const double TextSize = 9.5;
    private const double Gap = 6;
    private const double MostLabel = 250;
    private const double LeastShown = 0.05;

    // Labels of the checks stand at 60 degrees: cos and sin.
    private const double Across = 0.5, Up = 0.866;

    private readonly StudyWords _words = new(study);
    private readonly string[] _rows = [.. study.Causes.Select(cause => Fit(cause.Title))];
    private readonly string[] _columns = [.. study.Checks.Select((check, index) => Fit($"{(index + 1).ToString(CultureInfo.InvariantCulture)} {check.Title}"))];

    public string Write()
    {
        var left = Widest(_rows) + (2 * Gap);
        var slanted = Widest(_columns);
        var top = (slanted * Up) + TextSize + Gap;
        var noteRoom = Lettering.Width("no check can prove it", TextSize) + (2 * Gap);
        var right = Math.Max(noteRoom, (slanted * Across) + TextSize);
        var width = left + (study.Checks.Length * Cell) + right;
        var height = top + (study.Causes.Length * Cell) + Gap;
        var canvas = new SvgCanvas();
        canvas.Rectangle(0, 0, width, height, "#fff");
        for (var check = 0; check < study.Checks.Length; check++)
        {
            DrawColumn(canvas, check, left + (check * Cell), top, height);
        }

        for (var cause = 0; cause < study.Causes.Length; cause++)
        {
            DrawRow(canvas, cause, left, top + (cause * Cell));
        }

        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{Lettering.Number(width)}\" height=\"{Lettering.Number(height)}\" "
            + $"viewBox=\"0 0 {Lettering.Number(width)} {Lettering.Number(height)}\" font-family=\"{Lettering.Family}\" role=\"img\">\n"
            + $"<title>Causes by checks</title>\n{canvas}</svg>\n";
    }

    private void DrawColumn(SvgCanvas canvas, int check, double x, double top, double height)
    {
        var (footX, footY) = (Lettering.Number(x + (Cell / 2) + 3), Lettering.Number(top - 5));
        canvas.Raw($"<g transform=\"translate({footX} {footY}) rotate(-60)\">\n");
        canvas.Text(0, 0, _columns[check], TextSize);
        canvas.Raw("</g>\n");
        canvas.Path($"M{Lettering.Number(x)} {Lettering.Number(top)}V{Lettering.Number(height - Gap)}", "none", check % 5 == 0 ? "#888" : "#ddd", 0.7);
    }

    private void DrawRow(SvgCanvas canvas, int cause, double left, double y)
    {
        var right = left + (study.Checks.Length * Cell);
        var baseline = y + (Cell / 2) + 3.4;
        canvas.Path($"M{Lettering.Number(Gap)} {Lettering.Number(y)}H{Lettering.Number(right)}", "none", cause % 5 == 0 ? "#888" : "#ddd", 0.7);
        canvas.Text(left - Gap, baseline, _rows[cause], TextSize, anchor: "end");
        for (var check = 0; check < study.Checks.Length; check++)
        {
            var x = left + (check * Cell);
            if (study.Detects(cause, check))
            {
                canvas.Rectangle(x + 2.5, y + 2.5, Cell - 5, Cell - 5, "#123f6d");
            }
            else if (study.Likelihood(cause, check) >= LeastShown)
            {
                canvas.Rectangle(x + 5, y + 5, Cell - 10, Cell - 10, "#9db8d2");
            }
        }

        var note = study.Report.Undetected.Contains(cause) ? "no check can prove it" : _words.GroupOf(cause) is > 0 and var group ? $"group {group.ToString(CultureInfo.InvariantCulture)}" : "";
        canvas.Text(right + Gap, baseline, note, TextSize, isBold: note.StartsWith('n'));
    }

    private static double Widest(string[] labels) => labels.Select(label => Lettering.Width(label, TextSize)).DefaultIfEmpty(0).Max();

    private static string Fit(string text)
    {
        var line = Lettering.Wrap(text, MostLabel, TextSize).ToList();
        return line.Count > 1 ? Lettering.Wrap(text, MostLabel - 10, TextSize).First() + " ..." : line.FirstOrDefault() ?? "";
    }
}
