using System.Text;
using DiagRules.Results;

namespace DiagRules.Charts.Picture;

/// <summary>A chart as one HTML document that needs nothing from elsewhere; well-formed XML too.</summary>
internal sealed class ChartHtml(TroubleshootingChart chart)
{
    private const string Style = """
        @page { size: A4 landscape; margin: 0 }
        @page steps { size: A4 portrait; margin: 14mm }
        body { margin: 0; background: #ddd; color: #000; font: 11pt/1.35 Arial, 'Liberation Sans', Helvetica, sans-serif }
        .sheet { background: #fff; margin: 6mm auto; width: 297mm; max-width: 100%; box-shadow: 0 1px 4px #888 }
        .sheet svg { display: block; width: 100%; height: auto }
        .steps { page: steps; background: #fff; margin: 6mm auto; padding: 10mm 14mm; max-width: 182mm; box-shadow: 0 1px 4px #888 }
        h1 { font-size: 16pt; margin: 0 0 2mm } h2 { font-size: 12pt; margin: 5mm 0 1mm; border-bottom: 1px solid #999 }
        section.step, .hazard { break-inside: avoid } p, ol, ul { margin: 1mm 0 } ol, ul { padding-left: 6mm }
        .signal { font-weight: bold; padding: 0 1.2mm; white-space: nowrap }
        .Danger { background: #c8102e; color: #fff } .Warning { background: #ff8200 } .Caution { background: #f9e300 } .Notice { background: #0f5fa8; color: #fff }
        .faint { color: #444; font-size: 9.5pt }
        @media print { body { background: none; -webkit-print-color-adjust: exact; print-color-adjust: exact }
          .sheet { margin: 0; width: 297mm; height: 209mm; overflow: hidden; box-shadow: none; break-after: page } .sheet svg { height: 209mm }
          .steps { margin: 0; padding: 0; max-width: none; box-shadow: none } }
        """;

    private readonly StringBuilder _html = new();
    private readonly Dictionary<string, HazardNotice> _hazards = chart.Hazards.ToDictionary(hazard => hazard.Hazard, StringComparer.Ordinal);

    public string Document()
    {
        var title = Lettering.Escape(ChartWords.Title(chart));
        _html.Append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"").Append(Lettering.Escape(chart.Language))
            .Append("\">\n<head>\n<meta charset=\"utf-8\"/>\n<title>").Append(title).Append("</title>\n<style>\n").Append(Style).Append("\n</style>\n</head>\n<body>\n");
        foreach (var picture in new ChartSvg(chart).Pictures())
        {
            _html.Append("<div class=\"sheet\">\n").Append(picture).Append("</div>\n");
        }

        _html.Append("<div class=\"steps\">\n<h1>").Append(title).Append(": the steps</h1>\n");
        Element("p", $"{ChartWords.Subject(chart)}: {chart.PackTitle}", "faint");
        WriteHazards();
        foreach (var step in chart.Steps)
        {
            Write(step);
        }

        Element("p", ChartWords.Deference, "faint");
        return _html.Append("</div>\n</body>\n</html>\n").ToString();
    }

    private void WriteHazards()
    {
        if (chart.Hazards.IsEmpty)
        {
            return;
        }

        Element("h2", "What can hurt");
        foreach (var hazard in chart.Hazards)
        {
            _html.Append("<p class=\"hazard\">");
            Signal(hazard);
            _html.Append(" <b>").Append(Lettering.Escape(ChartWords.Plain(hazard.Hazard))).Append("</b>: ").Append(Lettering.Escape(hazard.Says));
            Labelled("Avoid", hazard.Avoid);
            Labelled("Over when", hazard.Clears);
            _html.Append("</p>\n");
        }
    }

    private void Write(ChartStep step)
    {
        _html.Append("<section class=\"step\">\n");
        Element("h2", step.Title);
        Element("p", $"Box {Words.Join([.. step.Boxes.Select(box => box.ToString(System.Globalization.CultureInfo.InvariantCulture))])}", "faint");
        if (!step.Hazards.IsEmpty)
        {
            _html.Append("<p>");
            foreach (var hazard in step.Hazards.Select(_hazards.GetValueOrDefault).OfType<HazardNotice>())
            {
                Signal(hazard);
                _html.Append(' ').Append(Lettering.Escape(ChartWords.Plain(hazard.Hazard))).Append("; ");
            }

            _html.Length -= 2;
            _html.Append("</p>\n");
        }

        List("Tools", "ul", step.Tools);
        List("", "ol", step.Instructions);
        List("Parts", "ul", step.Parts);
        List("Fasteners", "ul", step.Fasteners);
        List("Prove it by", "ul", [.. step.Proofs.Select(ChartWords.Proof)]);
        _html.Append("</section>\n");
    }

    private void Signal(HazardNotice hazard) =>
        _html.Append("<span class=\"signal ").Append(hazard.SignalWord).Append("\">").Append(Lettering.Escape(ChartWords.Label(hazard))).Append("</span>");

    private void Labelled(string label, string? text)
    {
        if (text is not null)
        {
            _html.Append(" <i>").Append(label).Append(":</i> ").Append(Lettering.Escape(text));
        }
    }

    private void List(string label, string element, IReadOnlyList<string> texts)
    {
        if (texts.Count == 0)
        {
            return;
        }

        if (label.Length > 0)
        {
            Element("p", label + ":");
        }

        _html.Append('<').Append(element).Append(">\n");
        foreach (var text in texts)
        {
            Element("li", text);
        }

        _html.Append("</").Append(element).Append(">\n");
    }

    private void Element(string name, string text, string? kind = null) =>
        _html.Append('<').Append(name).Append(kind is null ? "" : $" class=\"{kind}\"").Append('>').Append(Lettering.Escape(text)).Append("</").Append(name).Append(">\n");
}
