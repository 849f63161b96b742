namespace DiagRules.Charts.Picture;

/// <summary>
/// A box with what follows it: after a check to the right, one below the other; after a repair below it. Since every tile keeps to its own rows and a
/// line never leaves the gap behind its box, lines cannot cross and boxes cannot overlap.
/// </summary>
internal sealed class Tile(BoxPicture picture, IReadOnlyList<Tile> right, Tile? below)
{
    public const double ColumnGap = 27;
    private const double RowGap = 9;
    private const double DownGap = 14;

    /// <summary>Columns it takes up.</summary>
    public int Columns { get; } = Math.Max(below?.Columns ?? 1, 1 + (right.Count == 0 ? 0 : right.Max(tile => tile.Columns)));

    /// <summary>Its height with all that follows.</summary>
    public double Height { get; } = below is not null
        ? picture.Height + DownGap + below.Height
        : Math.Max(picture.Height, right.Sum(tile => tile.Height) + (RowGap * Math.Max(0, right.Count - 1)));

    /// <summary>Its width with all that follows.</summary>
    public double Width => WidthOf(Columns);

    /// <summary>Width of so many columns.</summary>
    public static double WidthOf(int columns) => (columns * BoxPicture.Width) + ((columns - 1) * ColumnGap);

    public void Draw(SvgCanvas canvas, double x, double y)
    {
        picture.Draw(canvas, x, y);
        if (below is not null)
        {
            var middle = x + 24;
            var top = y + picture.Height;
            canvas.Path($"M{Lettering.Number(middle)} {Lettering.Number(top)}v{Lettering.Number(DownGap - 5)}", "none", "#222", 1.3);
            canvas.Path($"M{Lettering.Number(middle)} {Lettering.Number(top + DownGap)}l-4 -7h8z", "#222");
            below.Draw(canvas, x, top + DownGap);
        }

        DrawRight(canvas, x + BoxPicture.Width, y);
    }

    private void DrawRight(SvgCanvas canvas, double edge, double y)
    {
        if (right.Count == 0)
        {
            return;
        }

        var trunk = edge + (ColumnGap / 2) - 3;
        var outlet = y + picture.Outlet;
        double highest = outlet, lowest = outlet, row = y;
        canvas.Path($"M{Lettering.Number(edge)} {Lettering.Number(outlet)}H{Lettering.Number(trunk)}", "none", "#222", 1.3);
        foreach (var tile in right)
        {
            var inlet = row + tile.Inlet;
            highest = Math.Min(highest, inlet);
            lowest = Math.Max(lowest, inlet);
            canvas.Path($"M{Lettering.Number(trunk)} {Lettering.Number(inlet)}H{Lettering.Number(edge + ColumnGap - 5)}", "none", "#222", 1.3);
            canvas.Path($"M{Lettering.Number(edge + ColumnGap)} {Lettering.Number(inlet)}l-7 -4v8z", "#222");
            tile.Draw(canvas, edge + ColumnGap, row);
            row += tile.Height + RowGap;
        }

        canvas.Path($"M{Lettering.Number(trunk)} {Lettering.Number(highest)}V{Lettering.Number(lowest)}", "none", "#222", 1.3);
    }

    private double Inlet => picture.Inlet;
}
