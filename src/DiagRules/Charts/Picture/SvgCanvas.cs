using System.Text;

namespace DiagRules.Charts.Picture;

/// <summary>Draws SVG: nothing but rectangles, lines, paths and text, so that every viewer and printer shows the same.</summary>
internal sealed class SvgCanvas
{
    private readonly StringBuilder _svg = new();

    public void Rectangle(double x, double y, double width, double height, string fill, string? stroke = null, double strokeWidth = 1, double radius = 0) =>
        _svg.Append("<rect x=\"").Append(Lettering.Number(x)).Append("\" y=\"").Append(Lettering.Number(y))
            .Append("\" width=\"").Append(Lettering.Number(width)).Append("\" height=\"").Append(Lettering.Number(height))
            .Append(radius > 0 ? $"\" rx=\"{Lettering.Number(radius)}" : "")
            .Append("\" fill=\"").Append(fill)
            .Append(stroke is null ? "" : $"\" stroke=\"{stroke}\" stroke-width=\"{Lettering.Number(strokeWidth)}")
            .Append("\"/>\n");

    public void Path(string path, string fill, string? stroke = null, double strokeWidth = 1) =>
        _svg.Append("<path d=\"").Append(path).Append("\" fill=\"").Append(fill)
            .Append(stroke is null ? "" : $"\" stroke=\"{stroke}\" stroke-width=\"{Lettering.Number(strokeWidth)}")
            .Append("\"/>\n");

    /// <summary>A line of text; <paramref name="y"/> is its baseline.</summary>
    public void Text(double x, double y, string text, double size, bool isBold = false, string fill = "#000", string anchor = "start") =>
        _svg.Append("<text x=\"").Append(Lettering.Number(x)).Append("\" y=\"").Append(Lettering.Number(y))
            .Append("\" font-size=\"").Append(Lettering.Number(size))
            .Append(isBold ? "\" font-weight=\"bold" : "")
            .Append(fill == "#000" ? "" : $"\" fill=\"{fill}")
            .Append(anchor == "start" ? "" : $"\" text-anchor=\"{anchor}")
            .Append("\">").Append(Lettering.Escape(text)).Append("</text>\n");

    /// <summary>Takes over what stands in <paramref name="markup"/> as it is.</summary>
    public void Raw(string markup) => _svg.Append(markup);

    public override string ToString() => _svg.ToString();
}
