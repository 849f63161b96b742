using System.Globalization;
using System.Text;
using DiagRules.Charts.Picture;

namespace DiagRules.Testability.Presenting;

/// <summary>A study as plain text.</summary>
internal sealed class StudyText(TestabilityStudy study, int width)
{
    private readonly PlainPage _page = new(width);
    private readonly StudyWords _words = new(study);

    public string Write()
    {
        _page.Text(0, StudyWords.Title);
        _page.Text(0, study.PackTitle);
        _page.Text(0, _words.Subject);
        _page.Rule();
        foreach (var (label, text) in _words.Figures())
        {
            _page.Item(0, label, 18, text);
        }

        foreach (var (heading, items) in _words.Lists())
        {
            Write(heading, items);
        }

        WriteMatrix();
        _page.Blank();
        _page.Text(0, StudyWords.Caution);
        return _page.ToString();
    }

    private void Write(string heading, IReadOnlyList<string> items)
    {
        _page.Blank();
        _page.Text(0, heading);
        foreach (var item in items.Take(StudyWords.MostShown))
        {
            _page.Item(2, "-", 2, item);
        }

        _page.Text(2, items.Count > StudyWords.MostShown ? $"and {items.Count - StudyWords.MostShown} more" : "");
    }

    private void WriteMatrix()
    {
        _page.Blank();
        _page.Text(0, "Causes by checks ('x': detects)");
        var digits = study.Checks.Length.ToString(CultureInfo.InvariantCulture).Length;
        for (var digit = digits - 1; digit >= 0; digit--)
        {
            var line = new StringBuilder();
            for (var check = 1; check <= study.Checks.Length; check++)
            {
                var text = check.ToString(CultureInfo.InvariantCulture);
                line.Append(digit < text.Length ? text[text.Length - 1 - digit] : ' ');
            }

            _page.Verbatim("  " + line);
        }

        for (var cause = 0; cause < study.Causes.Length; cause++)
        {
            var row = cause;
            var cells = string.Concat(study.Checks.Select((_, check) => study.Detects(row, check) ? 'x' : '.'));
            _page.Verbatim($"  {cells}  {study.Causes[cause].Title}");
        }

        _page.Blank();
        for (var check = 0; check < study.Checks.Length; check++)
        {
            _page.Item(2, (check + 1).ToString(CultureInfo.InvariantCulture).PadLeft(digits), digits + 1, study.Checks[check].Title);
        }
    }
}
