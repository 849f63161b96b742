using System.Text;
using DiagRules.Charts.Picture;

namespace DiagRules.Testability.Presenting;

/// <summary>A study as one HTML document that needs nothing from elsewhere; well-formed XML too.</summary>
internal sealed class StudyHtml(TestabilityStudy study)
{
    private const string Style = """
        @page { size: A4 landscape; margin: 10mm }
        body { margin: 8mm auto; max-width: 277mm; color: #000; font: 10.5pt/1.4 Arial, 'Liberation Sans', Helvetica, sans-serif }
        h1 { font-size: 16pt; margin: 0 0 1mm } h2 { font-size: 12pt; margin: 6mm 0 1mm; break-after: avoid } p, ul, ol { margin: 1mm 0 }
        li { break-inside: avoid } table { border-collapse: collapse } td { padding: 0.3mm 5mm 0.3mm 0; vertical-align: top }
        .faint { color: #444; font-size: 9.5pt } .picture svg { display: block; max-width: 100%; height: auto }
        @media print { body { margin: 0; max-width: none; -webkit-print-color-adjust: exact; print-color-adjust: exact } .picture { break-before: page } .picture svg { max-height: 185mm } }
        """;

    private readonly StringBuilder _html = new();
    private readonly StudyWords _words = new(study);

    public string Document()
    {
        _html.Append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"").Append(Lettering.Escape(study.Language))
            .Append("\">\n<head>\n<meta charset=\"utf-8\"/>\n<title>").Append(Lettering.Escape($"{StudyWords.Title}: {study.PackTitle}"))
            .Append("</title>\n<style>\n").Append(Style).Append("\n</style>\n</head>\n<body>\n");
        Element("h1", StudyWords.Title);
        Element("p", study.PackTitle);
        Element("p", _words.Subject, "faint");
        WriteFigures();
        foreach (var (heading, items) in _words.Lists())
        {
            Write(heading, items);
        }

        _html.Append("<div class=\"picture\">\n");
        Element("h2", "Causes by checks");
        Element("p", "Dark: the check detects the cause. Pale: it may come out abnormal, but not surely enough.", "faint");
        _html.Append(new MatrixPicture(study).Write()).Append("</div>\n");
        Element("p", StudyWords.Caution, "faint");
        return _html.Append("</body>\n</html>\n").ToString();
    }

    private void WriteFigures()
    {
        _html.Append("<table>\n");
        foreach (var (label, text) in _words.Figures())
        {
            _html.Append("<tr><td>").Append(Lettering.Escape(label)).Append("</td><td>").Append(Lettering.Escape(text)).Append("</td></tr>\n");
        }

        _html.Append("</table>\n");
    }

    private void Write(string heading, IReadOnlyList<string> items)
    {
        Element("h2", heading);
        _html.Append("<ul>\n");
        foreach (var item in items.Take(StudyWords.MostShown))
        {
            Element("li", item);
        }

        _html.Append("</ul>\n");
        if (items.Count > StudyWords.MostShown)
        {
            Element("p", $"and {items.Count - StudyWords.MostShown} more", "faint");
        }
    }

    private void Element(string name, string text, string? kind = null) =>
        _html.Append('<').Append(name).Append(kind is null ? "" : $" class=\"{kind}\"").Append('>').Append(Lettering.Escape(text)).Append("</").Append(name).Append(">\n");
}
